package thwartwise.inspection;

/**
 * The boat with water loose over all its inside.
 *
 * @param volume of the water, m³
 * @param leastFreeboard m
 * @param gm slope of the righting arm, trim free, loose water included, m
 * @param heel at the worst pose, positive starboard down, rad
 * @param returns whether it still comes back to how it lay dry
 */
public record WaterFigures(
    double volume, double leastFreeboard, double gm, double heel, boolean returns) {}
