package thwartwise.rules;

import java.util.List;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Vector3;

/**
 * The boat to which a rule is applied.
 *
 * @param kind of its hull, by the figures of our own set
 * @param crew the people aboard, for rules that ask how the crewed boat lies; otherwise nobody
 */
public record RatedBoat(BoatModel model, HullKind kind, List<Body> crew) {

  public RatedBoat {
    crew = List.copyOf(crew);
  }

  public double length() {
    return model.form().length();
  }

  double beam() {
    return model.form().beam();
  }

  Propulsion propulsion() {
    return model.boat().propulsion();
  }

  double hullMass() {
    return model.boat().hull().mass();
  }

  double kitMass() {
    return model.boat().kitMass();
  }

  /** The number of people for whom there are places. */
  public int room() {
    return model.boat().places().stream().mapToInt(p -> p.people()).sum();
  }

  /** x of the aft end of the hull, m. */
  public double aftEnd() {
    return model.form().outside().extent(Vector3.of(1, 0, 0)).from();
  }

  /** Kinds of hull as far as the measurements tell them apart. */
  public enum HullKind {
    CANOE("canoe"),
    OPEN_BOAT("open boat");

    private final String word;

    HullKind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
