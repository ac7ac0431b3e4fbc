package thwartwise.boat;

import java.util.Optional;
import thwartwise.geometry.Vector3;

/**
 * Anything carried.
 *
 * @param at its centre
 * @param volume its own volume, m³; without one it gives no lift
 * @param in the chamber it is stowed in
 */
public record Kit(
    String name,
    double mass,
    Vector3 at,
    Optional<Double> volume,
    boolean fastened,
    Optional<String> in) {

  /**
   * A battery gives off gas and a charger heats: the space that holds one is vented, never sealed.
   */
  public boolean needsVenting() {
    String words = name.toLowerCase(java.util.Locale.ROOT);
    return words.contains("batter") || words.contains("charger") || words.contains("accumulator");
  }
}
