/**
 * Whether what was measured can be a boat. Each doubt has an identity, so that somebody who knows
 * better can keep the measurement with a reason; without one nothing is recommended. SI.
 */
package thwartwise.plausibility;
