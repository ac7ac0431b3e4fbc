package thwartwise.boat;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * The waters where the boat will be used, by what a person on the bank can see. What is left out
 * was not stated and is taken as sheltered; nothing stated here ever makes a limit laxer.
 *
 * @param waves highest, trough to crest, m
 * @param breaking whether crests tumble over
 * @param wind strongest, m/s
 * @param current strongest, m/s
 * @param weir a weir, sluice or fall the boat could be carried to
 * @param wash passing boats throw up waves
 * @param temperature of the water, degrees Celsius
 * @param offshore farthest from where somebody can stand or climb out, m
 */
public record Waters(
    Optional<Double> waves,
    Optional<Boolean> breaking,
    Optional<Double> wind,
    Optional<Double> current,
    Optional<Boolean> weir,
    Optional<Boolean> wash,
    Optional<Double> temperature,
    Optional<Double> offshore) {

  public static final Waters NOT_STATED =
      new Waters(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** Whether nobody stated anything about them. */
  public boolean isUnstated() {
    return Stream.of(waves, breaking, wind, current, weir, wash, temperature, offshore)
        .allMatch(Optional::isEmpty);
  }
}
