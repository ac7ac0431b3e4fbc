package thwartwise.plausibility;

import java.util.Optional;
import thwartwise.checks.CheckWords;
import thwartwise.checks.FigureWords;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.checks.Unit;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/**
 * What one look at the measurements came to.
 *
 * @param kept the reason for which a measurement that looks wrong was kept
 * @param measured what was measured, short, to be told from another measurement of the same thing
 * @param keptForAnother whether a reason is there that was given for another measurement
 */
public record PlausibilityFinding(
    DoubtId id, Finding finding, Optional<String> kept, String measured, boolean keptForAnother) {

  /** Whether nothing may be recommended until it is measured again or kept with a reason. */
  public boolean withholds() {
    return isDoubtful() && kept.isEmpty();
  }

  /** In a line: what it is of, what it comes to, what it should be, and what to do. */
  String words(UnitFormat units) {
    Margin margin = finding.margin();
    Side has = margin.atLeast() ? Side.DOWN : Side.UP;
    Side needs = margin.atLeast() ? Side.UP : Side.DOWN;
    return "%s: %s, %s %s; %s"
        .formatted(
            CheckWords.of(finding.question()),
            figure(margin.value().orElse(Double.NaN), has, units),
            margin.atLeast() ? "needs at least" : "must not exceed",
            figure(margin.limit(), needs, units),
            finding.note());
  }

  private String figure(double si, Side side, UnitFormat units) {
    Unit unit = finding.margin().unit();
    double shown = unit.shown(si);
    String metric = (side == Side.DOWN ? unit.down(shown) : unit.up(shown)) + " " + unit.word();
    return units.either(metric, () -> FigureWords.own(unit, si, side, units).orElse(metric));
  }

  /** The same as a sentence; what ends with a question needs no full stop. */
  public String sentence(UnitFormat units) {
    String words = words(units);
    return words.endsWith("?") ? words : words + ".";
  }

  /** Whether it looks wrong, kept or not. */
  public boolean isDoubtful() {
    return finding.outcome() != Outcome.MEETS;
  }
}
