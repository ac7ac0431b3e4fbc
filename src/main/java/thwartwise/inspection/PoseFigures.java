package thwartwise.inspection;

import java.util.OptionalDouble;
import thwartwise.afloat.PoseOrientation;

/**
 * How the boat lies.
 *
 * @param waterAtOrigin height up the boat's z axis at x = y = 0 where the water cuts it, m; empty
 *     when the boat lies so far over that it means nothing
 * @param heel positive starboard down, rad
 * @param trim positive bow down, rad
 * @param stable whether it returns when nudged
 */
public record PoseFigures(
    PoseOrientation orientation,
    OptionalDouble waterAtOrigin,
    double heel,
    double trim,
    boolean stable) {}
