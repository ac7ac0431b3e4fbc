package thwartwise.checks;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.SwampedWater;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Swamped, with one of the crew back in it and the others in the water beside it: is the rail out,
 * so that it can be bailed at all, how many litres are in it, and how long does that take? Bailing
 * from inside comes after getting back in: where nobody can, nobody bails.
 */
public record Bailing(RuleSet rules) implements Check {
  private static final String NOBODY_IN =
      "nobody gets back in to bail, over the side, the stern or the bow";
  private static final String UNDER = "an edge is under: the sea comes in as fast as it is bailed";

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
        SteadyRest.least(
            poses, p -> Freeboard.least(empty.model().edges(), p.plane()).height() - loss);
    Limit limit = rules.limit("bailing-freeboard");
    CheckReading rail =
        new CheckReading(
            CheckQuestion.of(CheckId.BAILING, Measure.FREEBOARD),
            Margin.atLeast(limit.value(), out, Unit.METRE),
            poses.assessed(),
            limit.cited(),
            empty.loadCase(),
            SteadyRest.words(poses));
    CheckReading minutes = minutes(empty, poses);
    if (!(out.orElse(-1) > 0)) {
      return List.of(rail, minutes.without(out.isEmpty() ? SteadyRest.words(poses) : UNDER));
    }
    boolean getsIn = new GettingBackIn(rules).readings(boat).stream().anyMatch(CheckReading::met);
    return List.of(rail, getsIn ? minutes : minutes.without(NOBODY_IN));
  }

  /** Each of the crew in turn; with no crew aboard nobody bails from inside. */
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
    double litres =
        1000
            * poses.reached().stream()
                .mapToDouble(p -> SwampedWater.inside(empty.looseWater(), Bay.WHOLE, p))
                .max()
                .orElse(0);
    UnitFormat units = empty.units();
    Limit limit = rules.limit("bailing-minutes");
    Optional<Double> bailer = empty.model().boat().bailer();
    double litresEach = bailer.map(v -> 1000 * v).orElse(rules.value("bailer"));
    double aMinute = litresEach * rules.value("bailer-fill") * rules.value("bailer-strokes");
    return new CheckReading(
        CheckQuestion.of(CheckId.BAILING, Measure.TIME),
        Margin.atMost(60 * limit.value(), OptionalDouble.of(60 * litres / aMinute), Unit.MINUTE),
        true,
        limit.cited(),
        empty.loadCase(),
        String.format(
            Locale.ROOT,
            "%s with a bailer of %s%s, %.0f strokes a minute each %.0f %% full",
            units.either(
                String.format(Locale.ROOT, "%.0f litres", Math.ceil(litres)),
                () -> units.volume(litres / 1000, Side.UP)),
            units.either(
                String.format(Locale.ROOT, "%.1f litres", litresEach),
                () -> units.jug(litresEach / 1000)),
            bailer.isPresent() ? "" : " (none was named)",
            rules.value("bailer-strokes"),
            100 * rules.value("bailer-fill")));
  }
}
