package thwartwise.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.Space;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/** Swamped with any one chamber filled, is the lift to spare still there? */
public final class OneChamberLost implements Check {
  private final RuleSet rules;

  public OneChamberLost(RuleSet rules) {
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

  /** The worst chamber to lose; a boat with none that counts has nothing to lose here. */
  @Override
  public List<Reading> readings(Trial trial) {
    return trial.craft().spaces().stream()
        .filter(s -> s.counting().share() > 0)
        .map(s -> reading(trial, s))
        .min(Comparator.comparingDouble(Reading::margin))
        .stream()
        .toList();
  }

  private Reading reading(Trial trial, Space lost) {
    Limit each = rules.limit("swamped-lift-per-person");
    return new Reading(
        "swamped, " + lost.name() + " lost",
        OptionalDouble.of(trial.spareBuoyancy(Optional.of(lost))),
        true,
        each.value() * trial.people().size(),
        true,
        Unit.KILOGRAM,
        each.cited(),
        trial.condition(),
        "the chamber whose loss costs most");
  }
}
