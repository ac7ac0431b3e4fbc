package thwartwise.checks;

import java.util.List;
import thwartwise.rules.RuleSet;

/** May one person stand while the others sit? */
public final class OnePersonStanding implements Check {
  private final RuleSet rules;

  public OnePersonStanding(RuleSet rules) {
    this.rules = rules;
  }

  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public boolean aboutSwamped() {
    return false;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    return new Heeled(rules).readings("one person standing", Moves.standing(trial));
  }
}
