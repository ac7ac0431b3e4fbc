package thwartwise.afloat;

import java.util.OptionalDouble;
import thwartwise.geometry.Vector3;

/**
 * Water running in through a hole under the water: Torricelli's speed √(2gh) for the head h between
 * the sea and the water inside, times the hole's area and a coefficient. The boat settles and the
 * water inside rises as it runs; both are found again at each of a row of fillings, and the time
 * between two is the filling over the mean of their rates (trapezium rule of 1/Q).
 *
 * @param first rate with the boat still dry, m³/s; 0 when the hole is above the water
 * @param seconds until the volume looked for is in, until the boat sinks or turns over, or until
 *     the water inside is as good as level with the sea
 * @param levelAt how much is in when it is level, m³; empty when it does not come to that
 */
public record Inflow(double first, double seconds, OptionalDouble levelAt) {
  private static final int FILLINGS = 32;
  private static final double LEAST_HEAD = 1e-4;

  /**
   * @param hole middle of it
   * @param opening its area times the coefficient of discharge, m²
   * @param wanted the volume of water, m³
   */
  public static Inflow of(LooseWater water, Vector3 hole, double opening, double wanted) {
    FillingBoat boat = new FillingBoat(water, Bay.WHOLE);
    double first = rate(boat, hole, opening, 0).orElse(0);
    double seconds = 0;
    double before = first;
    double step = wanted / FILLINGS;
    for (int i = 1; i <= FILLINGS && before > 0; i++) {
      OptionalDouble there = rate(boat, hole, opening, i * step);
      if (there.isEmpty()) {
        return new Inflow(first, seconds, OptionalDouble.empty());
      }
      double here = there.getAsDouble();
      if (!(here > 0)) {
        return new Inflow(first, seconds, OptionalDouble.of((i - 1) * step));
      }
      seconds += step * (1 / before + 1 / here) / 2;
      before = here;
    }
    return new Inflow(first, seconds, OptionalDouble.empty());
  }

  /** Empty when the boat has sunk or turned over by then. */
  private static OptionalDouble rate(
      FillingBoat boat, Vector3 hole, double opening, double volume) {
    return boat.with(volume)
        .worst()
        .filter(Pose::isUpright)
        .map(pose -> OptionalDouble.of(rate(boat, hole, opening, volume, pose)))
        .orElse(OptionalDouble.empty());
  }

  private static double rate(
      FillingBoat boat, Vector3 hole, double opening, double volume, Pose pose) {
    double inside = boat.depthOver(hole, volume, pose).orElse(0);
    double head = -pose.above(hole) - Math.max(0, inside);
    return head > LEAST_HEAD ? opening * Math.sqrt(2 * Gravity.STANDARD * head) : 0;
  }
}
