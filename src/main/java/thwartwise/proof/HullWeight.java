package thwartwise.proof;

import thwartwise.boat.BoatModel;
import thwartwise.geometry.Vector3;

/**
 * What a hull weighs and where.
 *
 * @param mass of the bare hull, kg
 * @param along its centre of gravity forward of the aft end, m
 * @param height the same above the lowest point of the bottom, m
 */
public record HullWeight(double mass, double along, double height) {

  /** As it was measured, or estimated. */
  public static HullWeight of(BoatModel model) {
    Vector3 centre = model.form().centre();
    return new HullWeight(model.boat().hull().mass(), centre.x(), centre.z());
  }

  static HullWeight of(double[] values) {
    return new HullWeight(values[0], values[1], values[2]);
  }

  double[] values() {
    return new double[] {mass, along, height};
  }
}
