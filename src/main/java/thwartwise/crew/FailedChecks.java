package thwartwise.crew;

import java.util.List;
import java.util.Optional;
import thwartwise.checks.CheckQuestion;

/**
 * The checks that a crew fails: the readings that are not met in the seating that fails the fewest.
 *
 * @param breaches each check's worst reading that is not met
 */
public record FailedChecks(List<Refusal.ByCheck> breaches) {

  /** Empty when the boat has no seats for so many, or when every seating meets everything. */
  static Optional<FailedChecks> of(CrewAssessment assessment, int people, double mass) {
    Optional<Seating> least = Optional.empty();
    int fewest = Integer.MAX_VALUE;
    for (Seating seating : Seating.of(people, assessment.model().boat().places())) {
      // One that fails as many comes after the first that does; none fails fewer than one.
      int breached = fewest > 1 ? assessment.breached(seating, mass, fewest) : 0;
      if (breached > 0 && breached < fewest) {
        fewest = breached;
        least = Optional.of(seating);
      }
    }
    return least.map(s -> new FailedChecks(assessment.notMet(s, mass)));
  }

  CheckQuestion first() {
    return breaches.get(0).question();
  }
}
