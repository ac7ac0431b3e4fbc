package thwartwise.spread;

import thwartwise.checks.CheckQuestion;

/**
 * A measurement worth ten more minutes.
 *
 * @param item the name of what was measured; empty where it is the boat's
 * @param governs the figure that stands most in the way
 * @param share of the variance of that figure that the measurement makes up
 * @param people how many it could then be, should it come out one spread to the good side
 */
public record Remeasurement(
    InputKind kind, String item, CheckQuestion governs, double share, int people) {}
