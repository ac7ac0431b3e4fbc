package thwartwise.checks;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import thwartwise.afloat.RightingCurve;
import thwartwise.boat.Side;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.measure.UnitFormat;
import thwartwise.rules.RuleSet;

/** With everyone stiff and on the low side, how much work is left before water comes in? */
public record LowSide(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    return PeopleMoves.everyone(boat.stiff(), 1, Act.EVERYONE_STIFF_ON_THE_LOW_SIDE).stream()
        .map(this::reading)
        .min(CheckReading.WORST_FIRST)
        .stream()
        .toList();
  }

  private CheckReading reading(LoadedBoat low) {
    Side side = low.loading().centre().y() > 0 ? Side.PORT : Side.STARBOARD;
    return RightingCurve.toward(side, low.afloat(), low.edges())
        .map(curve -> reading(low, curve))
        .orElseGet(() -> reading(low, OptionalDouble.empty(), false, "no trim balances it"));
  }

  private CheckReading reading(LoadedBoat low, RightingCurve curve) {
    RightingCurve.Point greatest = curve.greatest();
    boolean rights = greatest.arm() > 0;
    String note =
        String.format(
            Locale.ROOT,
            "to %s it ends at %.0f degrees, because %s; %s",
            curve.side().word(),
            Math.floor(Math.toDegrees(curve.last().heel())),
            curve.endsBecause(),
            rights
                ? String.format(
                    Locale.ROOT,
                    "at most %s bring it back, at %.0f degrees",
                    moment(curve.moment(greatest), low),
                    Math.floor(Math.toDegrees(greatest.heel())))
                : "nothing on the way brings it back");
    return reading(low, OptionalDouble.of(rights ? curve.energy() : 0), true, note);
  }

  private static String moment(double newtonMetres, LoadedBoat boat) {
    UnitFormat units = new UnitFormat(boat.model().boat().units());
    return units.either(
        String.format(Locale.ROOT, "%.0f Nm", Math.floor(newtonMetres)),
        () -> units.moment(newtonMetres, UnitFormat.Side.DOWN));
  }

  private CheckReading reading(
      LoadedBoat low, OptionalDouble value, boolean assessed, String note) {
    return new CheckReading(
        CheckQuestion.of(CheckId.LOW_SIDE, Measure.WORK),
        Margin.atLeast(rules.value("low-side-work"), value, Unit.NEWTON_METRE),
        assessed,
        rules.limit("low-side-work").cited(),
        low.loadCase(),
        note);
  }
}
