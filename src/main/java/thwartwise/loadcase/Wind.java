package thwartwise.loadcase;

import thwartwise.afloat.Pose;
import thwartwise.boat.WindArea;
import thwartwise.geometry.Profile;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.rules.RuleSet;

/**
 * The push of a steady wind on the hull above the water, on the people and on a solar panel, each
 * with its own area and drag coefficient.
 *
 * @param pressure of the wind, Pa
 */
public record Wind(RuleSet rules, double pressure) {

  public static Wind of(RuleSet rules) {
    double speed = rules.value("wind");
    return new Wind(rules, rules.value("air-density") / 2 * speed * speed);
  }

  /** N, wind coming from a direction. */
  public double push(LoadedBoat boat, Pose pose, Vector3 from) {
    return hull(boat, pose, from) + people(boat) + areas(boat);
  }

  /**
   * The centre of pressure: the mean of hull and people, each weighted by its share of the force.
   */
  public Vector3 centre(LoadedBoat boat, Pose pose, Vector3 from) {
    double onHull = hull(boat, pose, from);
    Vector3 sum = Profile.of(dry(boat, pose), from).centre().times(onHull);
    double onEach = person();
    for (var body : boat.people()) {
      sum = sum.plus(body.middle().times(onEach));
    }
    for (WindArea area : WindArea.of(boat.model().boat())) {
      sum = sum.plus(area.at().times(area(area)));
    }
    double all = onHull + onEach * boat.people().size() + areas(boat);
    return all > 0 ? sum.times(1 / all) : Vector3.ZERO;
  }

  private double hull(LoadedBoat boat, Pose pose, Vector3 from) {
    return pressure * rules.value("drag-hull") * Profile.of(dry(boat, pose), from).area();
  }

  private double areas(LoadedBoat boat) {
    return WindArea.of(boat.model().boat()).stream().mapToDouble(this::area).sum();
  }

  /** The push on a flat plate, such as the side of a hull, N. */
  private double area(WindArea area) {
    return pressure * rules.value("drag-hull") * area.area();
  }

  private double people(LoadedBoat boat) {
    return boat.people().size() * person();
  }

  private double person() {
    return pressure * rules.value("drag-person") * rules.value("person-area");
  }

  private static Solid dry(LoadedBoat boat, Pose pose) {
    WaterPlane plane = pose.plane();
    WaterPlane turned = new WaterPlane(plane.up().times(-1), -plane.height());
    return boat.model().form().outside().under(turned);
  }
}
