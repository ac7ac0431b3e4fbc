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
 */
public record SolarPanel(
    Optional<String> kit,
    double watts,
    Optional<Double> panelFuse,
    Optional<Double> batteryFuse,
    Optional<Boolean> connectedToBattery) {}
