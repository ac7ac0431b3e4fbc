package thwartwise.inspection;

import thwartwise.geometry.Vector3;

/**
 * The boat at rest, dry inside. Metres, kilograms, cubic metres.
 *
 * @param waterplaneArea of the hull at the water's surface, m²
 * @param gm slope of the righting arm at the pose, trim free, m
 * @param leastFreeboard lowest of rail and openings above the water, square to it, m
 */
public record AfloatFigures(
    double displacement,
    Vector3 centreOfGravity,
    PoseFigures pose,
    double immersedVolume,
    Vector3 centreOfBuoyancy,
    double waterplaneArea,
    double gm,
    double leastFreeboard,
    String leastFreeboardAt,
    boolean stable) {}
