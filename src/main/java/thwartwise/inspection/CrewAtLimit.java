package thwartwise.inspection;

import java.util.Collections;
import java.util.List;
import thwartwise.boat.Body;
import thwartwise.boat.Craft;

/** The people of a report's loading at the limit, seated as it was worked out. */
public final class CrewAtLimit {
  private CrewAtLimit() {}

  /**
   * None when nothing is recommended, and none when the report is of another boat: then no seating
   * of this one is what its loading says.
   */
  public static List<Body> of(Craft craft, Report report) {
    Recommendation crew = report.recommendation();
    if (crew.withheld() || report.atLimit().afloat().isEmpty()) {
      return List.of();
    }
    int people = Math.max(1, crew.people());
    double each = people(craft, report.atLimit().afloat().get()) / people;
    return Seating.of(people, craft.boat().places()).stream()
        .flatMap(
            s ->
                s.packings(craft.boat().places()).stream()
                    .filter(
                        p ->
                            Inspection.atLimit(craft, s, each, p)
                                .equals(report.atLimit().loading()))
                    .map(p -> s.bodies(craft, Collections.nCopies(people, each), p)))
        .findFirst()
        .orElse(List.of());
  }

  private static double people(Craft craft, AfloatFigures afloat) {
    return afloat.displacement() - craft.boat().hull().mass() - craft.boat().kitMass();
  }
}
