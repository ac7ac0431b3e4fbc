package thwartwise.boat;

import java.util.List;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;

/**
 * Everything aboard: the hull, all kit, the people, and any extra weight, with every mass
 * multiplied by a factor.
 *
 * @param extra weight added to what the file lists
 * @param massFactor the factor for every mass (the allowance for the scales)
 */
public record Loading(BoatModel model, List<Body> people, List<Weight> extra, double massFactor) {

  public Loading {
    people = List.copyOf(people);
    extra = List.copyOf(extra);
  }

  /** A mass at a point, kg and m. */
  public record Weight(double mass, Vector3 at) {}

  public double mass() {
    double sum = model.boat().hull().mass() + model.boat().kitMass();
    sum += people.stream().mapToDouble(Body::mass).sum();
    sum += extra.stream().mapToDouble(Weight::mass).sum();
    return massFactor * sum;
  }

  /** The centre of gravity of everything aboard. */
  public Vector3 centre() {
    HullMeasurements hull = model.boat().hull();
    double sum = hull.mass();
    Vector3 moment = model.form().centre().times(hull.mass());
    for (Kit kit : model.boat().kit()) {
      sum += kit.mass();
      moment = moment.plus(kit.at().times(kit.mass()));
    }
    for (Body body : people) {
      sum += body.mass();
      moment = moment.plus(body.centre().times(body.mass()));
    }
    for (Weight weight : extra) {
      sum += weight.mass();
      moment = moment.plus(weight.at().times(weight.mass()));
    }
    return moment.times(1 / sum);
  }

  public Loading with(List<Body> others) {
    return new Loading(model, others, extra, massFactor);
  }
}
