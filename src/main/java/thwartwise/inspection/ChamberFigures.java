package thwartwise.inspection;

import thwartwise.geometry.Vector3;

/**
 * A chamber as drawn inside the shell.
 *
 * @param volume drawn, m³
 * @param countedVolume what counts when swamped, m³
 * @param counted whether anything counts
 * @param why in words: why it counts or does not, and what would change that
 */
public record ChamberFigures(
    String name,
    double volume,
    Vector3 centre,
    double countedVolume,
    boolean counted,
    String why) {}
