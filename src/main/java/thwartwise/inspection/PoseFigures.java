package thwartwise.inspection;

import java.util.OptionalDouble;

/**
 * How the boat lies.
 *
 * @param word upright, on its side, bow up, stern up, upside down
 * @param waterAtOrigin height up the boat's z axis at x = y = 0 where the water cuts it, m; empty
 *     when the boat lies so far over that it means nothing
 * @param heel positive starboard down, rad
 * @param trim positive bow down, rad
 * @param stable whether it returns when nudged
 */
public record PoseFigures(
    String word, OptionalDouble waterAtOrigin, double heel, double trim, boolean stable) {}
