package thwartwise.checks;

import java.util.List;
import thwartwise.boat.Space;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/** Swamped with any one chamber filled, is there still lift to spare? */
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

  /** The reading for the chamber whose loss costs most; none without a chamber that counts. */
  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    return boat.counted().stream().map(s -> reading(boat, s)).min(CheckReading.WORST_FIRST).stream()
        .toList();
  }

  private CheckReading reading(LoadedBoat boat, Space lost) {
    return SwampedLift.toSpare(
        rules,
        boat,
        CheckQuestion.of(CheckId.ONE_CHAMBER_LOST, Measure.LIFT, lost.name()),
        List.of(lost),
        Note.of(Note.Fact.COSTLIEST_LOSS));
  }
}
