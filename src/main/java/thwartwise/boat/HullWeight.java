package thwartwise.boat;

/**
 * The mass and centre of a hull.
 *
 * @param mass of the bare hull, kg
 * @param along its centre of gravity forward of the aft end, m
 * @param height the same above the lowest point of the bottom, m
 */
public record HullWeight(double mass, double along, double height) {

  public static HullWeight of(double[] values) {
    return new HullWeight(values[0], values[1], values[2]);
  }

  public double[] values() {
    return new double[] {mass, along, height};
  }
}
