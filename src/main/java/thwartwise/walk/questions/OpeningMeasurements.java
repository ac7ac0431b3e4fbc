package thwartwise.walk.questions;

import java.util.Optional;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Opening;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.Dimension;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.PartProperties;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.PlausibleRange;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/**
 * The position and size of one opening, by its kind. Distances that follow from the hull are not
 * asked: the position of the transom and of the rail.
 *
 * @param into the chamber it leads into; empty when it leads into the boat
 */
record OpeningMeasurements(
    Replay replay,
    QuantityQuestions quantities,
    Outline outline,
    PlausibleLimits limits,
    String key,
    String subject,
    OpeningKind kind,
    Optional<ChamberPart> into) {
  /**
   * The height of an opening above the rail, m (judgement): a coaming stands above the deck, and a
   * deck may be cambered.
   */
  private static final double ABOVE_RAIL = 0.3;

  /** A notch that is higher floods later than the rail it is cut into. */
  private static final String RAIL = "height of the rail there";

  /** The error allowed for a tape to the middle of a hatch, m. */
  private static final double LEEWAY = 0.05;

  Opening named(String name) {
    return switch (kind) {
      case NOTCH -> notch(name);
      case OAR_NOTCH -> oarNotch(name);
      case DRAIN -> drain(name);
      case DECK_HATCH, FACE_HATCH -> hatch(name);
      case CABLE_HOLE -> hole(name, replay.ask(along()));
      case OTHER -> other(name);
    };
  }

  /** A notch in the transom, whose position at this height is known. */
  private Opening notch(String name) {
    double y = across();
    double z = up(outline.higherRailAt(outline.stations().get(0).portRail().x()), RAIL);
    return new Opening(name, Vector3.of(outline.aftEndAt(z), y, z), width(), true);
  }

  /** A notch in the rail of one side, whose position there is known. */
  private Opening oarNotch(String name) {
    double x = replay.ask(along());
    double side = side();
    double z = up(outline.higherRailAt(x), RAIL);
    return new Opening(name, Vector3.of(x, side * outline.railAt(x), z), width(), false);
  }

  private double side() {
    return replay.ask(
        WordQuestions.choice(
                key + ".side",
                subject + ", in which side",
                ChoiceReader.of(1.0, "port", "left").or(-1.0, "starboard", "right"))
            .how("Looking forward, port is on the left. The one across from it: another one.")
            .why("It goes under first when the boat heels to that side."));
  }

  private Opening drain(String name) {
    Optional<Double> x = replay.ask(along().orWord("transom", "through the transom"));
    return x.isPresent() ? hole(name, x.get()) : throughTheTransom(name);
  }

  private Opening throughTheTransom(String name) {
    Opening hole = hole(name, outline.aft());
    Vector3 at = hole.middle();
    return new Opening(
        name,
        Vector3.of(outline.aftEndAt(at.z()), at.y(), at.z()),
        hole.width(),
        true,
        hole.closedBy(),
        hole.into(),
        hole.diameter());
  }

  private Opening hole(String name, double x) {
    double y = across();
    double z = up(outline.highest() + ABOVE_RAIL);
    double across = diameter();
    return new Opening(
        name,
        Vector3.of(x, y, z),
        across,
        true,
        closedBy(z, across),
        chamber(),
        Optional.of(across));
  }

  private Opening hatch(String name) {
    double x = replay.ask(along().within(this::elsewhere));
    double y = across();
    double z = up(outline.highest() + ABOVE_RAIL);
    double width = width();
    return new Opening(
        name,
        Vector3.of(x, y, z),
        width,
        !isAlong(x),
        closedBy(z, width),
        chamber(),
        Optional.empty());
  }

  private Opening other(String name) {
    double x = replay.ask(along());
    double y = across();
    double z = up(outline.highest() + ABOVE_RAIL);
    double width = width();
    Optional<String> closedBy = closedBy(z, width);
    return new Opening(
        name, Vector3.of(x, y, z), width, runsAcross(), closedBy, chamber(), Optional.empty());
  }

  private Optional<Span> lengthOfTheChamber() {
    return into.map(chamber -> chamber.box().x());
  }

  private Optional<String> chamber() {
    return into.map(ChamberPart::name);
  }

  /**
   * Whether the edge runs fore and aft, as in the front of a bench or where a hatch lies between
   * the ends of its chamber.
   */
  private boolean isAlong(double x) {
    return kind == OpeningKind.FACE_HATCH
        && lengthOfTheChamber()
            .filter(length -> x > length.from() + LEEWAY && x < length.to() - LEEWAY)
            .isPresent();
  }

  private Optional<Warning> elsewhere(double x) {
    return lengthOfTheChamber()
        .filter(l -> x < l.from() - LEEWAY || x > l.to() + LEEWAY)
        .map(
            l ->
                new Warning(
                    "%s is not at the %s, which lies from %s to %s. Measure it again, or back."
                        .formatted(
                            quantities.show(x),
                            chamber().orElseThrow(),
                            quantities.show(Math.max(l.from(), outline.aft())),
                            quantities.show(Math.min(l.to(), outline.fore()))),
                    Optional.empty(),
                    true));
  }

  /** The point to which the tape goes. */
  private String point() {
    return kind.isRound()
        ? "the middle of the hole"
        : kind == OpeningKind.DECK_HATCH
            ? "the middle of the hatch"
            : "the middle of its lowest edge";
  }

  private QuestionDefinition<Double> along() {
    return quantities
        .length(key + ".x", subject + ", forward of the aft end")
        .how("Tape from the aft end, level, to " + point() + ".")
        .show(kind.sketch())
        .why("Water reaches it when that place goes under.")
        .unlessAmbiguous(quantities.feetOrInches(outline.aft(), outline.fore()))
        .within(quantities.length(outline.aft(), outline.fore(), "length of the hull"));
  }

  private double across() {
    double beam = outline.halfBeam();
    return replay.ask(
        quantities
            .length(key + ".y", subject + ", port of the middle")
            .how(
                "From the middle line to " + point() + "; starboard",
                "with a minus; 0 on the middle line.")
            .show(kind.sketch())
            .why("An opening far out goes under first when the boat heels.")
            .within(quantities.length(-beam, beam, "breadth of the hull")));
  }

  private double up(double highest) {
    return up(highest, "height of the hull");
  }

  private double up(double highest, String bound) {
    return replay.ask(
        quantities
            .length(
                key + ".z",
                subject
                    + (kind.isRound()
                        ? ", height of its middle"
                        : kind == OpeningKind.DECK_HATCH
                            ? ", height of its coaming"
                            : ", height of its lowest edge"))
            .how(
                kind.isRound()
                    ? "From the baseline straight up to the middle of the hole."
                    : kind == OpeningKind.DECK_HATCH
                        ? "From the baseline straight up to the top of its coaming, where lowest."
                        : "From the baseline straight up to its lowest edge.")
            .show(kind.sketch())
            .why("This height is where flooding begins.")
            .within(quantities.length(outline.lowest(), highest, bound)));
  }

  private double width() {
    double widest = Math.max(2 * outline.halfBeam(), outline.fore() - outline.aft());
    return replay.ask(
        quantities
            .length(
                key + ".width",
                subject + (kind.isHatch() ? ", width of its opening" : ", length of that edge"))
            .how(
                kind.isHatch()
                    ? "Clear width of the hole itself; of a round hatch its diameter."
                    : "Tape along the lowest edge.")
            .show(kind.sketch())
            .why(PartProperties.OPENING_WIDTH.why().toArray(String[]::new))
            .within(quantities.length(0, widest, "size of the hull")));
  }

  private double diameter() {
    return replay.ask(
        quantities
            .length(key + ".diameter", subject + ", " + PartProperties.OPENING_DIAMETER.subject())
            .worded(PartProperties.OPENING_DIAMETER)
            .how("Clear across the hole, such as " + quantities.either("22 mm.", "7/8 in."))
            .show(kind.sketch())
            .within(
                new PlausibleRange(
                    Dimension.LENGTH,
                    quantities.system(),
                    BoatQuantity.DIAMETER.least(),
                    Opening.SMALL_HOLE,
                    "diameter of such a hole",
                    BoatQuantity.DIAMETER.least(),
                    BoatQuantity.DIAMETER.most())));
  }

  private Optional<String> closedBy(double z, double width) {
    return replay.ask(
        WordQuestions.name(
                key + ".closedBy",
                subject + ", " + PartProperties.OPENING_CLOSED_BY.subject(),
                "shuts it, such as bung")
            .worded(PartProperties.OPENING_CLOSED_BY)
            .how(
                "What shuts it whenever the boat is afloat: "
                    + (kind.isHatch() ? "hatch lid" : kind.isRound() ? "bung, cable gland" : "lid")
                    + "; or no.")
            .within(lid -> into.isPresent() ? Optional.empty() : tooLow(z, width))
            .orNone("nothing")
            .remark(lid -> lid.isPresent() ? Optional.empty() : spoiled()));
  }

  /** What an opening that nothing closes costs, if a leak test has proven its chamber. */
  private Optional<String> spoiled() {
    return into.filter(OpeningMeasurements::isProven)
        .map(part -> part.name() + " then counts for nothing, whatever its leak test showed");
  }

  private static boolean isProven(ChamberPart part) {
    return part.filling() instanceof Filling.Air air && air.seal() == Seal.PROVEN;
  }

  private boolean runsAcross() {
    return replay.ask(
        WordQuestions.choice(
                key + ".edge",
                subject + ", " + PartProperties.OPENING_ATHWART.subject(),
                ChoiceReader.of(true, "across", "athwart").or(false, "along", "fore and aft"))
            .worded(PartProperties.OPENING_ATHWART));
  }

  /** Doubts a wide opening low down, because a lid of that width is not relied on under water. */
  private Optional<Warning> tooLow(double z, double width) {
    double depth = outline.highest() - outline.lowest();
    return limits.isLidTooLow(z - outline.lowest(), width, depth)
        ? Optional.of(
            new Warning(
                "A hole %s wide, %s up, lies under water; nobody relies on a lid wider than %s there."
                        .formatted(
                            quantities.show(width),
                            quantities.show(z),
                            quantities.show(limits.lidMost()))
                    + " Measure its edge again, or say no.",
                Optional.of("no"),
                true))
        : Optional.empty();
  }
}
