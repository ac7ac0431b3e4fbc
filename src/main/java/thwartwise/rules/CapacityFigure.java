package thwartwise.rules;

import java.util.OptionalInt;

/**
 * What a published formula gives for this boat, shown beside our own answer.
 *
 * @param formula section and name
 * @param applies whether the rule is written for this boat; if not, it takes no part in the minimum
 * @param capsPeople whether the mass is a limit on the people aboard (otherwise on the whole load)
 * @param mass kg
 * @param persons the rule's own count of people, when it has one
 * @param note why it does not apply, or what was assumed
 */
public record CapacityFigure(
    String formula,
    boolean applies,
    boolean capsPeople,
    double mass,
    OptionalInt persons,
    String source,
    String note) {}
