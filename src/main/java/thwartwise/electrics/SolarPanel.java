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
 * @param sideArea of it as it stands, seen from the side of the boat, m²
 */
public record SolarPanel(
    Optional<String> kit,
    double watts,
    Optional<Double> panelFuse,
    Optional<Double> batteryFuse,
    Optional<Boolean> connectedToBattery,
    Optional<Double> sideArea) {
  /** What an old or thin one gives from each square metre, W/m² (judgement). */
  public static final double LEAST_YIELD = 100;

  /** Unmeasured it stands on its edge and is as large as panels of those watts ever were, m². */
  public double windArea() {
    return sideArea.orElse(watts / LEAST_YIELD);
  }
}
