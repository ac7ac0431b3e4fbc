/**
 * The hull: what was measured of it (stations, fin, material), and the solids built from that: the
 * skin between faired lines, the inside of the shell, the fin.
 *
 * <p>Metres, kilograms, cubic metres. x forward from the aft end, y to port, z up from the lowest
 * point of the bottom.
 */
package thwartwise.hull;
