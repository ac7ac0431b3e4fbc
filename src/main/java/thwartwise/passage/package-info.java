/**
 * The range of motor and battery, and the return trip: turn-back times against wind and current,
 * from a timed run and the battery's label. No resistance is predicted.
 *
 * <p>SI: metres, seconds, metres a second, amperes, coulombs, joules.
 */
package thwartwise.passage;
