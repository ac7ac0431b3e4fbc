package thwartwise.checks;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.RightingCurve;
import thwartwise.boat.Side;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
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
    return low.rightingCurve(side)
        .map(curve -> reading(low, curve))
        .orElseGet(() -> reading(low, OptionalDouble.empty(), false, Note.of(Note.Fact.NO_TRIM)));
  }

  private CheckReading reading(LoadedBoat low, RightingCurve curve) {
    RightingCurve.Point greatest = curve.greatest();
    boolean rights = greatest.arm() > 0;
    Note note =
        new Note.CurveEnd(
            curve.side(),
            curve.last().heel(),
            curve.end(),
            rights ? OptionalDouble.of(curve.moment(greatest)) : OptionalDouble.empty(),
            greatest.heel());
    return reading(low, OptionalDouble.of(rights ? curve.energy() : 0), true, note);
  }

  private CheckReading reading(LoadedBoat low, OptionalDouble value, boolean assessed, Note note) {
    return new CheckReading(
        CheckQuestion.of(CheckId.LOW_SIDE, Measure.WORK),
        Margin.atLeast(rules.value("low-side-work"), value, Unit.NEWTON_METRE),
        assessed,
        rules.limit("low-side-work").cited(),
        low.loadCase(),
        note);
  }
}
