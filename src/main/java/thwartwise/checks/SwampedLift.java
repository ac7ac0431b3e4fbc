package thwartwise.checks;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/** Swamped, is there lift to spare for each person to hold on to? */
public final class SwampedLift implements Check {
  private final RuleSet rules;

  public SwampedLift(RuleSet rules) {
    this.rules = rules;
  }

  @Override
  public Role role() {
    return Role.LIMITS_CREW;
  }

  @Override
  public boolean aboutSwamped() {
    return true;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    Limit each = rules.limit("swamped-lift-per-person");
    return List.of(
        new Reading(
            "swamped, lift to spare",
            OptionalDouble.of(trial.spareBuoyancy(Optional.empty())),
            true,
            each.value() * trial.people().size(),
            true,
            Unit.KILOGRAM,
            each.cited(),
            trial.condition(),
            ""));
  }
}
