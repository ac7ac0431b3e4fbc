package thwartwise.checks;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.LooseWater;
import thwartwise.boat.Boat;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Swamped, with one of the crew back in it and the others in the water next to it: is the rail
 * above the water, so that bailing is possible, how many litres are in it, and how long does
 * bailing take? Somebody must get back in first: where nobody can, nobody bails.
 */
public record Bailing(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    List<LoadedBoat> ways = oneInIt(boat);
    LoadedBoat empty = ways.get(0);
    Equilibria poses = Equilibria.of(ways.stream().map(w -> w.swampedRest(List.of())).toList());
    double loss = boat.allowance().freeboardLoss();
    OptionalDouble out =
        StableRest.least(
            poses, p -> Freeboard.least(empty.model().edges(), p.plane()).height() - loss);
    Limit limit = rules.limit("bailing-freeboard");
    CheckReading rail =
        new CheckReading(
            CheckQuestion.of(CheckId.BAILING, Measure.FREEBOARD),
            Margin.atLeast(limit.value(), out, Unit.METRE),
            poses.assessed(),
            limit.cited(),
            empty.loadCase(),
            Note.of(poses));
    CheckReading minutes = minutes(empty, poses);
    if (!(out.orElse(-1) > 0)) {
      return List.of(
          rail, minutes.without(out.isEmpty() ? Note.of(poses) : Note.of(Note.Fact.EDGE_UNDER)));
    }
    boolean getsIn = new GettingBackIn(rules).readings(boat).stream().anyMatch(CheckReading::met);
    return List.of(
        rail, getsIn ? minutes : minutes.without(Note.of(Note.Fact.NOBODY_GETS_BACK_IN)));
  }

  /** One boat for each member of the crew who may bail; none without a crew. */
  private static List<LoadedBoat> oneInIt(LoadedBoat boat) {
    if (boat.people().isEmpty()) {
      return List.of(boat.empty(Act.EVERYONE_IN_THE_WATER));
    }
    return boat.people().stream()
        .map(
            b ->
                boat.after(
                    Disturbance.moved(LoadCaseStep.of(Act.BACK_IN_TO_BAIL, b.name()), List.of(b))))
        .toList();
  }

  private CheckReading minutes(LoadedBoat empty, Equilibria poses) {
    double water =
        poses.reached().stream()
            .mapToDouble(p -> LooseWater.filledVolume(empty.looseWater(), Bay.WHOLE, p))
            .max()
            .orElse(0);
    Limit limit = rules.limit("bailing-minutes");
    BailerRate bailer = BailerRate.of(rules, empty.model().boat());
    return new CheckReading(
        CheckQuestion.of(CheckId.BAILING, Measure.TIME),
        Margin.atMost(60 * limit.value(), OptionalDouble.of(bailer.time(water)), Unit.MINUTE),
        true,
        limit.cited(),
        empty.loadCase(),
        bailer.note(water));
  }

  /**
   * The rate of the bailer aboard, by strokes a minute and how full each is.
   *
   * @param each what it holds, m³
   * @param named whether somebody stated it
   */
  record BailerRate(double each, boolean named, double strokes, double fill) {
    static BailerRate of(RuleSet rules, Boat boat) {
      Optional<Double> bailer = boat.bailer();
      return new BailerRate(
          bailer.orElse(rules.value("bailer") / 1000),
          bailer.isPresent(),
          rules.value("bailer-strokes"),
          rules.value("bailer-fill"));
    }

    /** The time to move a volume, s. */
    double time(double volume) {
      return 60 * volume / (each * fill * strokes);
    }

    Note note(double volume) {
      return new Note.Bailed(volume, each, named, strokes, fill);
    }
  }
}
