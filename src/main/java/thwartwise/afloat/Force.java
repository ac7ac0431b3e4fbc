package thwartwise.afloat;

import thwartwise.geometry.Vector3;

/**
 * A horizontal force on the boat, fixed against its heading: a line, the wind, the push of a motor.
 * What of it points up or down is a weight at the same point and belongs to the loading.
 *
 * @param at where it attacks, in the boat's axes, m
 * @param ahead N toward the bow
 * @param toPort N
 */
public record Force(Vector3 at, double ahead, double toPort) {}
