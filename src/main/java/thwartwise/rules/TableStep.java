package thwartwise.rules;

/** One row of a rule's table: up to and including this size, so many. */
public record TableStep(double upTo, double value) {}
