package thwartwise.boat;

/**
 * A pair of rowlocks, one on each side.
 *
 * @param x forward of the aft end, m
 */
public record Rowlocks(double x) {}
