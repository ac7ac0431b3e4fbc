package thwartwise.afloat;

import java.util.OptionalDouble;
import thwartwise.geometry.Vector3;

/**
 * Water running in through a hole under the water: Torricelli's speed √(2gh) for the head h between
 * the sea and the water inside, times the hole's area and a coefficient. The boat settles and the
 * water inside rises as it runs; both are found anew at each of a row of fillings, and the time
 * between two is the filling over the mean of their rates (trapezium rule of 1/Q).
 *
 * @param first rate with the boat still dry, m³/s; 0 when the hole is above the water
 * @param seconds until so much is in; empty when the water inside is level with the sea before
 * @param levelAt how much is in when both are level, m³; empty when trouble comes first
 */
public record Inflow(double first, OptionalDouble seconds, OptionalDouble levelAt) {
  private static final int FILLINGS = 32;
  private static final double LEAST_HEAD = 1e-4;

  /**
   * @param hole middle of it
   * @param opening its area times the coefficient of discharge, m²
   * @param trouble how much water is looked for, m³
   */
  public static Inflow of(LooseWater water, Vector3 hole, double opening, double trouble) {
    double first = rate(water, hole, opening, 0);
    double seconds = 0;
    double before = first;
    if (!(before > 0)) {
      return new Inflow(0, OptionalDouble.empty(), OptionalDouble.of(0));
    }
    for (int i = 1; i <= FILLINGS; i++) {
      double volume = trouble * i / FILLINGS;
      double here = rate(water, hole, opening, volume);
      if (!(here > 0)) {
        return new Inflow(first, OptionalDouble.empty(), OptionalDouble.of(volume));
      }
      seconds += trouble / FILLINGS * (1 / before + 1 / here) / 2;
      before = here;
    }
    return new Inflow(first, OptionalDouble.of(seconds), OptionalDouble.empty());
  }

  private static double rate(LooseWater water, Vector3 hole, double opening, double volume) {
    return Equilibrium.from(water.in(Bay.WHOLE, volume))
        .worst()
        .map(pose -> rate(water, hole, opening, volume, pose))
        .orElse(0.0);
  }

  private static double rate(
      LooseWater water, Vector3 hole, double opening, double volume, Pose pose) {
    double inside = water.depthOver(hole, pose.plane().up(), Bay.WHOLE, volume).orElse(0);
    double head = -pose.above(hole) - Math.max(0, inside);
    return head > LEAST_HEAD ? opening * Math.sqrt(2 * Gravity.STANDARD * head) : 0;
  }
}
