package thwartwise.walk.borrowed;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.Simplification;
import thwartwise.boat.Opening;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Material;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.measured.BoatQuantity;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;
import thwartwise.walk.questions.MaterialChoices;
import thwartwise.walk.questions.Sketches;

/** The hull of a borrowed boat: six dimensions, the shape of its section, and its mass. */
record BorrowedHull(Replay replay, QuantityQuestions quantities, List<Assumption> assumed) {
  /**
   * Boats of this kind are lighter than this, kg for each square metre of length times beam
   * (judgement).
   */
  private static final double HEAVY = 22;

  EstimatedLines lines() {
    double length = length();
    SectionForm form = form();
    double beam = beam(length);
    double bottom = form == SectionForm.FLAT ? bottom(beam) : 0;
    double depth = depth(beam);
    assumed.add(new Assumption.Simplified(Simplification.HULL_DRAWN_FROM_A_FEW_DIMENSIONS));
    return new EstimatedLines(length, beam, bottom, depth, stern(beam), form);
  }

  private double length() {
    return replay.ask(
        quantities
            .length("short.length", "Length overall")
            .how(
                "Along the middle, from the aft end to the tip of the bow. In a row with ;",
                "between: length; form; breadth over the rails; of a flat bottom; depth;",
                "breadth at the stern; lowest notch or hole in it, or no. Or the length alone.")
            .why("Everything else is laid out along it.")
            .within(quantities.length(2.0, 6.1, "length of boats this is for"))
            .row(
                "Hull",
                List.of(
                    "length",
                    "flat, v, round",
                    "beam",
                    "bottom if flat",
                    "depth",
                    "stern",
                    "notch")));
  }

  private SectionForm form() {
    return replay.ask(
        WordQuestions.choice("short.form", "Across the middle its bottom is", forms())
            .how(
                "Look from aft. flat: the bottom is a board. v: two boards that meet on the",
                "keel. round: no corner between bottom and side.")
            .why("A flat bottom is steady at first, a round one gives way slowly."));
  }

  private static ChoiceReader<SectionForm> forms() {
    return ChoiceReader.of(SectionForm.FLAT, "flat")
        .or(SectionForm.SHALLOW_V, "v", "vee", "shallow v")
        .or(SectionForm.ROUND, "round");
  }

  private double beam(double length) {
    return replay.ask(
        quantities
            .length("short.beam", "Breadth over the rails, where it is widest")
            .how("A stick laid across both rails, from outside to outside.")
            .show(Sketches.SHORT)
            .why("Breadth is what keeps it from tipping.")
            .within(
                quantities
                    .length(
                        Math.max(0.6, length / 8),
                        Math.min(2.6, length),
                        "breadth of a boat so long")
                    .unlessInsisted()));
  }

  private double bottom(double beam) {
    return replay.ask(
        quantities
            .length("short.bottom", "Breadth of the bottom at that place")
            .how("Between the two corners of bottom and side; reach under, or tape inside.")
            .show(Sketches.SHORT)
            .why("A narrow bottom sinks deeper and tips sooner.")
            .within(quantities.length(0.2 * beam, beam, "breadth of a bottom under such rails")));
  }

  private double depth(double beam) {
    return replay.ask(
        quantities
            .length("short.depth", "Depth from rail to bottom, where the rail is lowest")
            .how("A stick across the rails; from its underside straight down to the bottom.")
            .show(Sketches.SHORT)
            .why("Only the part above the water keeps the water out.")
            .within(
                quantities
                    .length(0.15, Math.min(0.9, beam), "depth of a boat so broad")
                    .unlessInsisted()));
  }

  private double stern(double beam) {
    return replay.ask(
        quantities
            .length("short.stern", "Breadth over the rails at the stern")
            .how("From outside to outside at the aft end; 0 when the stern is pointed.")
            .why("A broad stern carries a motor and a helm, a pointed one sinks under them.")
            .within(quantities.length(0, beam, "breadth where it is widest")));
  }

  /** A motor notch or any other dip in the edge of the boat. */
  List<Opening> lowestEdge(EstimatedLines lines) {
    Optional<Double> notch =
        replay.ask(
            quantities
                .length("short.notch", "Height of the lowest notch or hole in the stern")
                .how(
                    "Up from the lowest point of the bottom to the lowest edge of a cut for a motor",
                    "or an open drain; no when there is none.")
                .show(Sketches.EDGE)
                .why("Water comes in there long before it reaches the rail.")
                .within(quantities.length(0.02, lines.depth(), "height of the rail"))
                .orWord("no", "none"));
    double width = Math.max(0.02, Math.min(0.4, lines.stern()));
    return notch
        .map(
            z -> List.of(new Opening("lowest edge of the stern", Vector3.of(0, 0, z), width, true)))
        .orElse(List.of());
  }

  /** The density of an unknown material is that of the heaviest, which sinks. */
  Optional<Material> material() {
    ChoiceReader<Optional<Material>> choices =
        MaterialChoices.known()
            .or(Optional.empty(), "unknown", "other", "something else", "not sure");
    Optional<Material> material =
        replay.ask(
            WordQuestions.choice("short.material", "It is made of", choices)
                .how(
                    "What most of the shell is made of: look at a cut edge. Plywood under a glass",
                    "skin is plywood. Enter or unknown: it is taken to sink as aluminium does.")
                .why("Its material decides whether a swamped hull lifts or pulls down.")
                .orElse(Optional.empty(), "unknown"));
    if (material.isEmpty()) {
      assumed.add(new Assumption.Simplified(Simplification.MATERIAL_NOT_KNOWN));
    }
    return material;
  }

  double mass(EstimatedLines lines) {
    double heavy = HEAVY * lines.length() * lines.beam();
    UnitFormat units = new UnitFormat(quantities.system());
    Optional<Double> weighed =
        replay.ask(
            quantities
                .mass("short.mass", "Mass of the empty boat")
                .how(
                    "A bathroom scale under each end in turn, the other end on a block of the same",
                    "height: add the two readings. Or as stamped on it. Enter: a heavy guess. In a",
                    "row: what it is made of, too.")
                .why("The heavier the boat, the fewer people.")
                .within(quantities.usual(BoatQuantity.HULL_MASS))
                .optional(
                    units.mass(heavy, Side.UP).replace(UnitFormat.TIED, " ") + ", a heavy guess")
                .row("Empty, it weighs", List.of(quantities.either("kg", "lb"), "made of")));
    if (weighed.isEmpty()) {
      assumed.add(new Assumption.HullByArea(HEAVY));
    }
    return weighed.orElse(heavy);
  }
}
