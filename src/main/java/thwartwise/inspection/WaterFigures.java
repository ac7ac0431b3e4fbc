package thwartwise.inspection;

/**
 * The boat with water loose over all its inside.
 *
 * @param volume of the water, m³
 * @param leastFreeboard m
 * @param gm slope of the righting arm, trim free, loose water included, m
 * @param returns whether it comes back to one and the same pose when nudged
 */
public record WaterFigures(double volume, double leastFreeboard, double gm, boolean returns) {}
