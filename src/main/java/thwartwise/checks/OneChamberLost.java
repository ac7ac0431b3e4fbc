package thwartwise.checks;

import java.util.Comparator;
import java.util.List;
import thwartwise.boat.Space;
import thwartwise.rules.RuleSet;

/** Swamped with any one chamber filled, is the lift to spare still there? */
public record OneChamberLost(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.LIMITS_CREW;
  }

  @Override
  public boolean aboutSwamped() {
    return true;
  }

  @Override
  public boolean byVolumesAlone() {
    return true;
  }

  /** The worst chamber to lose; a boat with none that counts has nothing to lose here. */
  @Override
  public List<Reading> readings(Trial trial) {
    return trial.counted().stream()
        .map(s -> reading(trial, s))
        .min(Comparator.comparingDouble(Reading::margin))
        .stream()
        .toList();
  }

  private Reading reading(Trial trial, Space lost) {
    return SwampedLift.toSpare(
        rules,
        trial,
        "swamped, " + lost.name() + " lost",
        List.of(lost),
        "the chamber whose loss costs most");
  }
}
