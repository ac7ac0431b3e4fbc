/**
 * What was measured of the boat about its hull, and the solids built from it: chambers, places,
 * kit, people, loading.
 *
 * <p>Metres, kilograms, cubic metres. x forward from the aft end, y to port, z up from the lowest
 * point of the bottom.
 */
package thwartwise.boat;
