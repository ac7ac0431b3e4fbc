package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Inflow;
import thwartwise.afloat.LooseWater;
import thwartwise.afloat.WaterLimits;
import thwartwise.boat.Opening;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/** The bung is on the kitchen table: how fast does each drain let water in, and for how long? */
public record DrainOpen(RuleSet rules) implements Check {
  private static final String ABOVE =
      "it lies above the water, so nothing runs in while the boat lies still";

  /** Shown where nothing runs in, s. */
  private static final double A_DAY = 24 * 3600;

  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    List<Opening> drains =
        boat.model().boat().openings().stream()
            .filter(o -> o.closedBy().isPresent() && o.into().isEmpty())
            .toList();
    if (drains.isEmpty()) {
      return List.of();
    }
    LooseWater water = boat.looseWater();
    Equilibria rest = boat.atRest();
    double trouble =
        WaterLimits.of(water, Bay.WHOLE, boat.edges()).trouble().orElse(Double.POSITIVE_INFINITY);
    List<CheckReading> readings = new ArrayList<>();
    drains.forEach(d -> readings.add(reading(boat, rest, water, d, trouble)));
    return readings;
  }

  private CheckReading reading(
      LoadedBoat boat, Equilibria rest, LooseWater water, Opening drain, double trouble) {
    if (!rest.allUpright()) {
      return reading(boat, drain, OptionalDouble.empty(), SteadyRest.words(rest));
    }
    if (rest.reached().stream().allMatch(p -> p.above(drain.middle()) >= 0)) {
      return reading(boat, drain, OptionalDouble.of(A_DAY), ABOVE);
    }
    double area = area(drain) * rules.value("drain-coefficient");
    double noticed = Math.min(rules.value("loose-water") / 1000, trouble);
    Inflow inflow = Inflow.of(water, drain.middle(), area, noticed);
    boolean stops = inflow.levelAt().isPresent();
    double seconds = stops ? A_DAY : inflow.seconds();
    return reading(
        boat, drain, OptionalDouble.of(seconds), note(inflow, noticed, trouble, boat.units()));
  }

  private CheckReading reading(
      LoadedBoat boat, Opening drain, OptionalDouble seconds, String note) {
    Limit limit = rules.limit("drain-minutes");
    return new CheckReading(
        CheckQuestion.of(
            CheckId.DRAIN_OPEN, Measure.TIME, drain.name(), drain.closedBy().orElseThrow()),
        Margin.atLeast(60 * limit.value(), seconds, Unit.MINUTE),
        true,
        limit.cited(),
        boat.loadCase().with(List.of(LoadCaseStep.of(Act.OPEN))),
        note);
  }

  private static double area(Opening drain) {
    double across = drain.diameter().orElse(drain.width());
    return Math.PI * across * across / 4;
  }

  private static String litres(double volume, Side side, UnitFormat units) {
    double metric = side == Side.UP ? Math.ceil(1000 * volume) : Math.floor(1000 * volume);
    return units.either(
        String.format(Locale.ROOT, "%.0f litres", metric), () -> units.volume(volume, side));
  }

  private static String note(Inflow inflow, double noticed, double trouble, UnitFormat units) {
    String rate = litres(60 * inflow.first(), Side.UP, units) + " a minute at first";
    if (inflow.levelAt().isPresent()) {
      return rate
          + "; it stops at "
          + litres(inflow.levelAt().getAsDouble(), Side.DOWN, units)
          + ", level with the sea";
    }
    String until = "; then " + litres(noticed, Side.DOWN, units) + " are in";
    return noticed < trouble
        ? rate + until + ", and more comes"
        : rate + until + " and it floods, rolls over or lies over";
  }
}
