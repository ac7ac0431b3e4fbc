/**
 * Checking the measurements of a boat by how it floats: freeboards and heels read next to the
 * landing, compared with the computed ones, and the mass and centre of gravity of the bare hull
 * that fit them best.
 *
 * <p>Metres, kilograms, radians, seconds, in the axes of the boat. The period of a roll is a
 * cross-check and never enters the fit.
 */
package thwartwise.proof;
