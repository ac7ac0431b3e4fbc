/**
 * Vectors, closed solids, and the one operation the program is built on: the part of a solid under
 * a water plane.
 *
 * <p>Axes: x forward, y to port, z up. Metres throughout.
 */
package thwartwise.geometry;
