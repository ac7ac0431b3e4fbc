package thwartwise.plausibility;

import java.util.Optional;
import thwartwise.checks.CheckWords;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.checks.Unit;

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
  public String words() {
    Margin margin = finding.margin();
    Unit unit = margin.unit();
    double has = unit.shown(margin.value().orElse(Double.NaN));
    double needs = unit.shown(margin.limit());
    return "%s: %s %s, %s %s %s; %s"
        .formatted(
            CheckWords.of(finding.question()),
            margin.atLeast() ? unit.down(has) : unit.up(has),
            unit.word(),
            margin.atLeast() ? "needs at least" : "must not exceed",
            margin.atLeast() ? unit.up(needs) : unit.down(needs),
            unit.word(),
            finding.note());
  }

  /** The same as a sentence; what ends with a question needs no full stop. */
  public String sentence() {
    String words = words();
    return words.endsWith("?") ? words : words + ".";
  }

  /** Whether it looks wrong, kept or not. */
  public boolean isDoubtful() {
    return finding.outcome() != Outcome.MEETS;
  }
}
