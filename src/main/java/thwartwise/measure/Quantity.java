package thwartwise.measure;

/**
 * A measurement.
 *
 * @param si in metres, kilograms, cubic metres, watts or seconds
 * @param guessed whether it was said to be about so much, and not measured
 * @param understood the same in the unit it was typed in, with the other system beside it
 */
public record Quantity(double si, Dimension dimension, String understood, boolean guessed) {

  Quantity asAGuess() {
    return new Quantity(si, dimension, understood, true);
  }
}
