/**
 * The hull: its measurements (stations, fin, material), and the solids built from them: the skin
 * between faired lines, the inside of the shell, the fin.
 *
 * <p>Metres, kilograms, cubic metres. x forward from the aft end, y to port, z up from the lowest
 * point of the bottom.
 */
package thwartwise.hull;
