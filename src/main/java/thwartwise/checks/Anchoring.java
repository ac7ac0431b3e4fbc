package thwartwise.checks;

import java.util.List;
import java.util.Locale;
import thwartwise.rules.RuleSet;

/**
 * May the boat lie to a line, with current and wind pulling and snatching at it? By the stern it is
 * an act to forbid; by the bow it is for the reader to know.
 */
public record Anchoring(RuleSet rules, boolean byTheStern) implements Check {
  @Override
  public Role role() {
    return byTheStern ? Role.FORBIDS_AN_ACT : Role.INFORMATION;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    List<Trial> ways =
        LineOut.of(rules, trial, byTheStern).stream().map(line -> pulled(trial, line)).toList();
    return new Heeled(rules)
        .readings(byTheStern ? "anchoring by the stern" : "anchoring by the bow", ways);
  }

  private Trial pulled(Trial trial, LineOut line) {
    double pull = Math.ceil(line.expected(trial));
    Trial pulling = line.pulling(trial, pull);
    return pulling.called(
        String.format(
            Locale.ROOT,
            "%.0f N of level pull at the %s, %s, leading %.0f degrees down",
            pull,
            line.cleat().name(),
            Lever.words(trial, line.cleat().at(), line.toward()),
            rules.value("line-angle")),
        trial);
  }
}
