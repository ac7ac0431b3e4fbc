package thwartwise.checks;

import java.util.List;
import thwartwise.rules.RuleSet;

/** May the crew of a canoe sit on its seats, where kneeling is what its limits are for? */
public record SittingUp(RuleSet rules) implements Check {
  /** Subject of its findings. */
  public static final String SUBJECT = "sitting on the seats and not kneeling";

  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    if (!UsualPosture.kneels(rules, trial)) {
      return List.of();
    }
    String how = "everyone on the seats and three fifths of the way";
    return new Heeled(rules)
        .readings(SUBJECT, Moves.everyone(trial, rules.value("offset-share"), how));
  }
}
