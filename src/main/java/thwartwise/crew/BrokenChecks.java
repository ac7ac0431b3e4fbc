package thwartwise.crew;

import java.util.List;
import java.util.Optional;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckReading;
import thwartwise.checks.FigureWords;
import thwartwise.measure.UnitFormat;

/**
 * What a crew breaks: the readings that are not met in the seating that breaks least.
 *
 * @param breaches each check's worst reading that is not met
 * @param units in which they are told
 */
public record BrokenChecks(List<Breach> breaches, UnitFormat units) {

  /** Empty when the boat has no seats for so many, or when every seating meets everything. */
  static Optional<BrokenChecks> of(CrewAssessment assessment, int people, double mass) {
    Optional<Seating> least = Optional.empty();
    int fewest = Integer.MAX_VALUE;
    for (Seating seating : Seating.of(people, assessment.model().boat().places())) {
      // One that breaks as many comes after the first that does; none breaks fewer than one.
      int breached = fewest > 1 ? assessment.breached(seating, mass, fewest) : 0;
      if (breached > 0 && breached < fewest) {
        fewest = breached;
        least = Optional.of(seating);
      }
    }
    return least.map(s -> new BrokenChecks(assessment.notMet(s, mass), assessment.units()));
  }

  CheckQuestion first() {
    return breaches.get(0).reading().question();
  }

  List<String> words() {
    return breaches.stream().map(b -> b.words(units)).toList();
  }

  /**
   * A reading that is not met.
   *
   * @param afterAllowance whether it is only so once the allowance for tape and scales is taken off
   */
  public record Breach(CheckReading reading, boolean afterAllowance) {

    /** As measured before after the allowance, then the lesser margin. */
    Breach worse(Breach other) {
      if (afterAllowance != other.afterAllowance) {
        return afterAllowance ? other : this;
      }
      return other.reading.margin().room() < reading.margin().room() ? other : this;
    }

    String words(UnitFormat units) {
      return FigureWords.of(reading, units)
          + (afterAllowance ? " (after the allowance for tape and scales)" : "");
    }
  }
}
