/**
 * Equilibrium, righting curve and the swamped boat. SI: metre, kilogram, second, radian.
 *
 * <p>Heel is positive starboard down, trim positive bow down. A righting arm is positive when it
 * brings the boat back from a heel to starboard. Forces are written as masses; where a moment in
 * newton metres is wanted it is multiplied by {@link thwartwise.afloat.Gravity#STANDARD}.
 */
package thwartwise.afloat;
