package thwartwise.rules;

import java.util.List;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Vector3;

/**
 * The boat that a rule is put to.
 *
 * @param own our own set, whose figures tell a canoe from a dinghy
 * @param crew the people aboard, for rules that ask how the crewed boat lies; otherwise nobody
 */
public record RatedBoat(BoatModel craft, RuleSet own, List<Body> crew) {

  public RatedBoat {
    crew = List.copyOf(crew);
  }

  static RatedBoat empty(BoatModel craft, RuleSet own) {
    return new RatedBoat(craft, own, List.of());
  }

  public double length() {
    return craft.form().length();
  }

  double beam() {
    return craft.form().beam();
  }

  Propulsion propulsion() {
    return craft.boat().propulsion();
  }

  double hullMass() {
    return craft.boat().hull().mass();
  }

  double kitMass() {
    return craft.boat().kitMass();
  }

  /** How many the places take. */
  public int room() {
    return craft.boat().places().stream().mapToInt(p -> p.people()).sum();
  }

  /** x of the aft end of the hull, m. */
  public double aftEnd() {
    return craft.form().outside().extent(Vector3.of(1, 0, 0)).from();
  }
}
