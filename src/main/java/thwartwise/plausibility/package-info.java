/**
 * Whether the measurements can be those of a boat. Each doubt has an identity, so that somebody who
 * knows better can confirm the measurement with a reason; without one nothing is recommended. SI.
 */
package thwartwise.plausibility;
