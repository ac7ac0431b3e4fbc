package thwartwise.electrics;

import java.util.Optional;

/**
 * A panel and its controller.
 *
 * @param kit the name of the kit it is, where its mass and height stand
 * @param watts on its label, in full sun
 * @param panelFuse between panel and controller, A; zero for none
 * @param batteryFuse between controller and battery, A; zero for none
 * @param connectedToBattery whether the battery stays on the controller while sun is on the panel
 * @param sideArea as seen from the side of the boat, m²
 */
public record SolarPanel(
    Optional<String> kit,
    double watts,
    Optional<Double> panelFuse,
    Optional<Double> batteryFuse,
    Optional<Boolean> connectedToBattery,
    Optional<Double> sideArea) {
  /** The output of an old or thin panel for each square metre, W/m² (judgement). */
  public static final double LEAST_YIELD = 100;

  /**
   * The area seen by the wind, m². An unmeasured panel stands on its edge and is as large as panels
   * of that output ever were.
   */
  public double windArea() {
    return sideArea.orElse(watts / LEAST_YIELD);
  }
}
