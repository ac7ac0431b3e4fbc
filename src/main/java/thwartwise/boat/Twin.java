package thwartwise.boat;

import java.util.Optional;

/**
 * What is known by itself of the twin of a drawn chamber. Whatever is left out stands as it does
 * for the drawn one.
 *
 * @param filling air behind its own seal, with its own leak test, or foam
 * @param measuredVolume litres poured into the twin, in m³
 */
public record Twin(Optional<Filling> filling, Optional<Double> measuredVolume) {
  public static final Twin LIKE_THE_DRAWN = new Twin(Optional.empty(), Optional.empty());
}
