package thwartwise.checks;

import java.util.List;
import thwartwise.rules.RuleSet;

/** Does the boat stay up with everyone three fifths of the way to one side? */
public final class ThreeFifthsToOneSide implements Check {
  private final RuleSet rules;

  public ThreeFifthsToOneSide(RuleSet rules) {
    this.rules = rules;
  }

  @Override
  public Role role() {
    return Role.LIMITS_CREW;
  }

  @Override
  public boolean aboutSwamped() {
    return false;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    List<Trial> ways =
        Moves.everyone(trial, rules.value("offset-share"), "everyone three fifths of the way");
    return new Heeled(rules).readings("three fifths to one side", ways);
  }
}
