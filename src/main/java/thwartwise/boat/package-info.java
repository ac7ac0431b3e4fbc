/**
 * The measurements of a boat around its hull, and the solids built from them: chambers, places,
 * kit, people, loading.
 *
 * <p>Metres, kilograms, cubic metres. x forward from the aft end, y to port, z up from the lowest
 * point of the bottom.
 */
package thwartwise.boat;
