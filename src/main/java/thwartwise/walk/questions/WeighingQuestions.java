package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Vector3;
import thwartwise.measure.ChoiceReader;
import thwartwise.measured.BoatProperties;
import thwartwise.walk.engine.OrderedLengths;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the mass of the bare hull and, if the way of weighing tells it, its centre. */
record WeighingQuestions(
    Replay replay, QuantityQuestions quantities, Outline outline, SkinWarnings skin) {
  /**
   * A mass and what it tells of the centre.
   *
   * @param along x of the centre, if the weighing tells it
   * @param centre the whole centre, if the weighing tells it
   */
  record Weighed(double mass, Optional<Double> along, Optional<Vector3> centre) {}

  private enum Way {
    TOTAL,
    ENDS,
    PARTS
  }

  private record Part(String name, double mass, Vector3 at) {}

  Weighed weighed() {
    return switch (replay.ask(way())) {
      case TOTAL -> new Weighed(total(), Optional.empty(), Optional.empty());
      case ENDS -> ends();
      case PARTS -> parts();
    };
  }

  private static QuestionDefinition<Way> way() {
    return WordQuestions.choice(
            "hull.weighed",
            "How the bare hull was weighed",
            ChoiceReader.of(Way.TOTAL, "total")
                .or(Way.ENDS, "ends", "scales", "two scales", "each end", "in turn")
                .or(Way.PARTS, "parts"))
        .how(
            "total: one figure. ends: one bathroom scale under each end in turn, at places",
            "you can tape. parts: weighed one by one before they were put together.")
        .show(Sketches.ENDS)
        .why("The two ends also tell where the hull balances; one figure does not.")
        .orElse(Way.TOTAL, "total")
        .rowOrEnter(
            "The bare hull",
            List.of("total; mass", "or ends; block; mass; block; mass", "or parts"));
  }

  private double total() {
    return replay.ask(
        quantities
            .asked(BoatProperties.HULL_MASS, "hull.mass", BoatProperties.HULL_MASS.subject())
            .show(Sketches.ENDS)
            .within(skin::of));
  }

  /**
   * Level on two narrow blocks, the centre divides the distance in inverse proportion to the
   * readings. One scale is enough, because the load on a block is the same whether or not it stands
   * on the scale.
   */
  private Weighed ends() {
    double aft = place("aft", "Aft block", outline.aft());
    double aftMass = reading("aft", "Aft end");
    double fore = place("fore", "Fore block", aft);
    double mass = aftMass + foreMass(aftMass);
    return new Weighed(
        mass, Optional.of(aft + (fore - aft) * (mass - aftMass) / mass), Optional.empty());
  }

  private double place(String key, String subject, double least) {
    return replay.ask(
        quantities
            .length("hull.scale." + key + ".x", subject + ", forward of the aft end")
            .how(
                "Tape from the aft end, level, to the narrow block under the hull; both blocks",
                "stay where they are, and the scale goes under one and then the other.")
            .show(Sketches.ENDS)
            .why("Far apart they tell the balance best.")
            .unlessAmbiguous(quantities.feetOrInches(outline.aft(), outline.fore()))
            .within(quantities.length(outline.aft(), outline.fore(), "length of the hull"))
            .unless(
                x ->
                    key.equals("aft")
                        ? Optional.empty()
                        : OrderedLengths.backward(subject, least, x, quantities)));
  }

  /** The sum of both is checked as one mass. */
  private double foreMass(double aftMass) {
    return replay.ask(
        scale("fore", "Fore end")
            .within(
                fore ->
                    skin.of(aftMass + fore)
                        .map(
                            d ->
                                new Warning(
                                    BOTH + d.reason(), Optional.empty(), d.isConfirmable()))));
  }

  private static final String BOTH = "Both ends together: ";

  private double reading(String key, String subject) {
    return replay.ask(scale(key, subject));
  }

  private QuestionDefinition<Double> scale(String key, String subject) {
    return quantities
        .mass("hull.scale." + key + ".mass", subject + ", the scale shows")
        .how(
            "The scale under this block, as much height under the other one, the boat empty",
            "and level; take off what the block weighs.")
        .show(Sketches.ENDS)
        .why("The two together are the mass of the hull.")
        .within(quantities.mass(2, 400, "mass on one scale").unlessInsisted());
  }

  private Weighed parts() {
    List<Part> parts = new RepeatedQuestion(replay, "hull.part", "part", "").atLeastOne(this::part);
    double mass = parts.stream().mapToDouble(Part::mass).sum();
    Vector3 moment =
        parts.stream().map(p -> p.at().times(p.mass())).reduce(Vector3.ZERO, Vector3::plus);
    return new Weighed(mass, Optional.empty(), Optional.of(moment.times(1 / mass)));
  }

  private Part part(String key, List<Part> before) {
    String name =
        replay.ask(
            WordQuestions.name(
                    key + ".name", "Part, name", before.stream().map(Part::name).toList())
                .how("Such as bottom, sides, fore deck, thwart, transom.")
                .why("So that nothing is weighed twice."));
    String subject = "Part " + WordQuestions.quoted(name);
    double mass =
        replay.ask(
            quantities
                .mass(key + ".mass", subject + ", mass")
                .how("On the scales, glue and paint included.")
                .why("The parts together are the mass of the hull.")
                .within(quantities.mass(0.1, 400, "mass of a part").unlessInsisted()));
    double x =
        replay.ask(
            quantities
                .length(key + ".x", subject + ", its middle forward of the aft end")
                .how("Tape from the aft end, level, to where it balances.")
                .why("It sets how the boat trims.")
                .within(quantities.length(outline.aft(), outline.fore(), "length of the hull")));
    double z =
        replay.ask(
            quantities
                .length(key + ".z", subject + ", height of its middle")
                .how("From the baseline straight up to where it balances.")
                .why("What lies high makes the boat tender.")
                .within(
                    quantities.length(outline.lowest(), outline.highest(), "height of the hull")));
    return new Part(name, mass, Vector3.of(x, 0, z));
  }
}
