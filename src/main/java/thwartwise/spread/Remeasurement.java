package thwartwise.spread;

import thwartwise.checks.CheckQuestion;

/**
 * A measurement worth ten more minutes.
 *
 * @param item the name of what was measured; empty for the boat
 * @param governs the figure that prevents more people
 * @param share of the variance of that figure that comes from the measurement
 * @param people the number there could then be, if the new value is one spread better
 */
public record Remeasurement(
    InputKind kind, String item, CheckQuestion governs, double share, int people) {}
