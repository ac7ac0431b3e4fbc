/**
 * What a boat that floats says of its own measurements: freeboards and heels read next to the
 * landing, held against those that were worked out, and the mass and centre of gravity of the bare
 * hull that fit them best.
 *
 * <p>Metres, kilograms, radians, seconds, in the axes of the boat. The time of a roll is a
 * cross-check and never enters the fit.
 */
package thwartwise.proof;
