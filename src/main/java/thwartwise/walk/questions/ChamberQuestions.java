package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.boat.Chamber;
import thwartwise.boat.Chamber.Twin;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.geometry.Box;
import thwartwise.measure.ChoiceReader;
import thwartwise.measured.PartProperties;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the spaces and blocks that may hold the swamped boat up. */
public final class ChamberQuestions {
  private static final Filling OPEN = new Filling.Air(Seal.OPEN, Optional.empty());

  private final Replay replay;
  private final QuantityQuestions quantities;
  private final Outline outline;
  private final FillingQuestions fillings;

  public ChamberQuestions(
      Replay replay, QuantityQuestions quantities, Outline outline, LocalDate today) {
    this.replay = replay;
    this.quantities = quantities;
    this.outline = outline;
    this.fillings = new FillingQuestions(replay, quantities, today);
  }

  /** Compares litres poured in, m³, with what the box holds. */
  public interface DrawnVolume {
    Optional<String> words(double poured, Box box);
  }

  public List<Chamber> chambers(DrawnVolume drawn, Consumer<List<Chamber>> known) {
    return new RepeatedQuestion(
            replay, "chamber", "chamber", "Is there any enclosed space or foam block?")
        .inRows("Chamber", "where", "its limits")
        .orNone(
            entry ->
                entry
                    .how(
                        "Bow locker, box under a thwart, side tank, block of foam: whatever might",
                        "hold the boat up when it is full of water.")
                    .show(Sketches.CHAMBERS)
                    .why(
                        "An untested chamber counts for nothing; name it all the same, and the",
                        "report says what it would be worth once its leak test is recorded.")
                    .ifUnknown(false, "no"),
            (key, before) -> chamber(key, before, drawn),
            known);
  }

  private Chamber chamber(String key, List<Chamber> before, DrawnVolume drawn) {
    ChamberKind kind = kind(key);
    String name = name(key, kind, before);
    String subject = "Chamber " + WordQuestions.quoted(name);
    Lies lies = kind == ChamberKind.SIDE ? lies(key, subject) : Lies.ACROSS;
    ChamberSlips slips = new ChamberSlips(name, outline, before);
    Box drawnBox = box(key, subject, kind, slips, lies);
    Box box = lies == Lies.STARBOARD ? drawnBox.mirrored() : drawnBox;
    boolean mirrored =
        lies == Lies.BOTH || kind == ChamberKind.BLOCK && mirrored(key, subject, slips, box);
    Chamber undescribed = new Chamber(name, box, OPEN, Optional.empty(), mirrored);
    List<String> subjects = undescribed.parts().stream().map(ChamberQuestions::subject).toList();
    Filling filling = fillings.filling(key, subject, subjects.get(0));
    Twin twin = Twin.LIKE_THE_DRAWN;
    Optional<Double> litres = litres(key, subjects.get(0), poured -> drawn.words(poured, box));
    if (mirrored) {
      twin =
          twin(
              key + ".twin",
              subjects.get(1),
              filling,
              litres,
              poured -> drawn.words(poured, box.mirrored()));
    }
    return new Chamber(name, box, filling, litres, mirrored, false, twin);
  }

  /** What a block overlaps is checked after it is known whether the block has a twin. */
  private Box box(String key, String subject, ChamberKind kind, ChamberSlips slips, Lies lies) {
    return new LimitQuestions(
            replay,
            quantities,
            outline,
            key,
            subject,
            kind,
            box ->
                kind == ChamberKind.BLOCK
                    ? Optional.empty()
                    : slips.overlap(
                        lies == Lies.STARBOARD ? box.mirrored() : box, lies == Lies.BOTH))
        .box();
  }

  /** The side of the boat on which a chamber lies. */
  private enum Lies {
    PORT,
    STARBOARD,
    BOTH,
    ACROSS
  }

  private Lies lies(String key, String subject) {
    return replay.ask(
        WordQuestions.choice(
                key + ".side",
                subject + ", on which side",
                ChoiceReader.of(Lies.PORT, "port", "left")
                    .or(Lies.STARBOARD, "starboard", "right")
                    .or(Lies.BOTH, "both", "either", "each"))
            .how("both: the same again on the other side, as in a mirror on the middle line.")
            .show(Sketches.SIDE_CHAMBER)
            .why(PartProperties.MIRRORED.why().toArray(String[]::new)));
  }

  private ChamberKind kind(String key) {
    return replay.ask(
        WordQuestions.choice(key + ".kind", "Chamber or foam, where", ChamberKind.choices())
            .how(
                "bow, stern: at that end, under a deck or a seat, from side to side. thwart: a",
                "box under a thwart. side: under a seat along a side. block: anything else.",
                "Or all of it on one line, with ; between, in the order asked.")
            .show(Sketches.CHAMBERS)
            .why("Only the limits of such a chamber are asked; the hull closes its other sides."));
  }

  /** The words for a chamber in questions; twins are named by their sides. */
  public static String subject(ChamberPart part) {
    return "Chamber "
        + WordQuestions.quoted(part.whole().name())
        + part.side().map(side -> ", " + side.word()).orElse("");
  }

  /**
   * The filling of the second twin. Foam is entered once for both; seal, test and litres
   * separately.
   */
  private Twin twin(
      String key,
      String subject,
      Filling drawn,
      Optional<Double> poured,
      Function<Double, Optional<String>> comparison) {
    return new Twin(
        drawn instanceof Filling.Air ? Optional.of(fillings.air(key, subject)) : Optional.empty(),
        poured.isPresent() ? litres(key, subject, comparison) : Optional.empty());
  }

  private String name(String key, ChamberKind kind, List<Chamber> before) {
    // A chamber may not be called as the boat, because an opening leads into one or the other.
    List<String> taken =
        Stream.concat(Stream.of(OpeningQuestions.BOAT), before.stream().map(Chamber::name))
            .toList();
    String usual = WordQuestions.freeName(kind.usualName(), taken);
    return replay.ask(
        WordQuestions.name(key + ".name", "Chamber, name", taken)
            .how("Such as fore locker, side foam.")
            .show(kind.sketch())
            .why("Findings and advice call it by this name.")
            .orElse(usual, usual)
            .rowOrEnter(kind.title(), kind.order()));
  }

  private boolean mirrored(String key, String subject, ChamberSlips slips, Box box) {
    return replay.ask(
        WordQuestions.yesNo(PartProperties.MIRRORED, new QuestionTopic(key, subject))
            .orElse(false, "no")
            .row(subject, List.of("twin: yes or no", "air; seal", "or foam; closed; fastened"))
            .unless(twin -> slips.twinAcrossTheMiddle(box, twin))
            .unless(twin -> slips.overlap(box, twin)));
  }

  private Optional<Double> litres(
      String key, String subject, Function<Double, Optional<String>> comparison) {
    return replay.ask(
        quantities
            .asked(PartProperties.CHAMBER_LITRES, new QuestionTopic(key, subject))
            .remark(comparison)
            .optional("not measured"));
  }

  /** Boxes that a chamber cannot have, given the chambers before it. */
  private record ChamberSlips(String name, Outline outline, List<Chamber> before) {
    /**
     * Overlap that is allowed: neighbours share a bulkhead, and a tape is not exact to the
     * millimetre.
     */
    private static final double TOUCHING = 0.001;

    Optional<String> twinAcrossTheMiddle(Box box, boolean mirrored) {
      return mirrored && box.overlaps(box.mirrored())
          ? Optional.of(
              "Chamber \"%s\": it reaches across the middle line, so a twin would lie inside it. %s"
                  .formatted(name, "Answer no, or go back and limit it to one side."))
          : Optional.empty();
    }

    Optional<String> overlap(Box box, boolean mirrored) {
      return before.stream()
          .filter(other -> both(box, mirrored).anyMatch(b -> overlaps(b, other)))
          .findFirst()
          .map(
              other ->
                  "Chamber \"%s\" overlaps chamber \"%s\"; the same space cannot count twice. %s"
                      .formatted(
                          name,
                          other.name(),
                          "Go back and mend its limits, or type list, then change and a number."));
    }

    private boolean overlaps(Box one, Chamber other) {
      return both(other.box(), other.mirrored()).anyMatch(b -> deeply(one, b));
    }

    private boolean deeply(Box a, Box b) {
      if (!a.overlaps(b) || !a.common(b).overlaps(outline.bounds())) {
        return false;
      }
      Box shared = a.common(b).common(outline.bounds());
      return shared.x().length() > TOUCHING
          && shared.y().length() > TOUCHING
          && shared.z().length() > TOUCHING;
    }

    private static Stream<Box> both(Box box, boolean mirrored) {
      return mirrored ? Stream.of(box, box.mirrored()) : Stream.of(box);
    }
  }
}
