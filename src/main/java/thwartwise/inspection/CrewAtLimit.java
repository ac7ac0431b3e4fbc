package thwartwise.inspection;

import java.util.Collections;
import java.util.List;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Seating;
import thwartwise.inspection.StateFigures.AfloatFigures;
import thwartwise.loadcase.Crew;

/** The people of a report's loading at the limit, in their computed seats. */
public final class CrewAtLimit {
  private CrewAtLimit() {}

  /**
   * Empty when nothing is recommended, and when the report is of another boat, whose seats this
   * boat does not have.
   */
  public static List<Body> of(BoatModel model, Report report) {
    Recommendation crew = report.recommendation();
    if (crew.withheld() || report.atLimit().afloat().isEmpty()) {
      return List.of();
    }
    int people = Math.max(1, crew.people());
    double each = people(model, report.atLimit().afloat().get()) / people;
    if (!(report.atLimit().loadCase().crew() instanceof Crew.Alike alike)) {
      return List.of();
    }
    return seated(model, alike, people, each);
  }

  /** People of a load case, seated as it says; none where the boat has no such places. */
  public static List<Body> seated(BoatModel model, Crew.Alike alike) {
    return seated(model, alike, alike.people(), alike.eachKg());
  }

  private static List<Body> seated(BoatModel model, Crew.Alike alike, int people, double each) {
    return Seating.of(people, model.boat().places()).stream()
        .flatMap(
            s ->
                s.packings(model.boat().places()).stream()
                    .filter(p -> alike.packing() == p && sits(alike, s.places(model)))
                    .map(p -> s.bodies(model, Collections.nCopies(people, each), p)))
        .findFirst()
        .orElse(List.of());
  }

  /** Names in a row: an older record does not say where one of them ends. */
  private static boolean sits(Crew.Alike alike, List<String> places) {
    return String.join(", ", alike.places()).equals(String.join(", ", places));
  }

  private static double people(BoatModel model, AfloatFigures afloat) {
    return afloat.displacement() - model.boat().hull().mass() - model.boat().kitMass();
  }
}
