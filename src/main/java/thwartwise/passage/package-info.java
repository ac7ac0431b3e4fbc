/**
 * How far motor and battery take a boat, and the way home: turn-back times against wind and stream,
 * from a timed run and the battery's label. No resistance is predicted.
 *
 * <p>SI: metres, seconds, metres a second, amperes, coulombs, joules.
 */
package thwartwise.passage;
