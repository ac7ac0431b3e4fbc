package thwartwise.measure;

/**
 * A measurement.
 *
 * @param si in metres, kilograms, cubic metres, watts or seconds
 * @param understood the same in the unit it was typed in, with the other system beside it
 */
public record Quantity(double si, Dimension dimension, String understood) {}
