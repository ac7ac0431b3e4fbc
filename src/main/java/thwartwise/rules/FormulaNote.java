package thwartwise.rules;

import java.util.OptionalDouble;

/**
 * What a rule's number assumes, or why there is none; kg, m and degrees. Records store the names of
 * these types and of their components, so they are never renamed.
 */
public sealed interface FormulaNote {
  FormulaNote NONE = new None();

  record None() implements FormulaNote {}

  /** The rule set is not written for this boat. */
  record OutOfScope(ScopeMismatch why) implements FormulaNote {}

  /** A motor stronger than the table of motor weights. */
  record BeyondMotorTable(double horsepower) implements FormulaNote {}

  /** A boat longer than the rule's own table. */
  record BeyondLengthTable() implements FormulaNote {}

  /** The whole hull is taken as under water; whether air built into it does not count. */
  record HullUnderWater(boolean airExcluded) implements FormulaNote {}

  /** The two largest air chambers are left out. */
  record LargestChambersExcluded() implements FormulaNote {}

  /** Nobody stated how the boat is driven: taken as rowed. */
  record DriveUnstated() implements FormulaNote {}

  /**
   * How the largest motor was found.
   *
   * @param rounded by the rule's own rounding, which is not used; empty where it gives no more
   */
  record MotorFactor(
      double horsepower, double factor, boolean flat, boolean remote, OptionalDouble rounded)
      implements FormulaNote {}

  /** Freeboard with the recommended crew, or with nobody; whether the boat comes to rest so. */
  record Crewed(boolean crew, boolean rest) implements FormulaNote {}

  /** Iron that the swamped boat holds up by lift alone, and for one person more. */
  record IronLifted(double mass, double massForOneMore) implements FormulaNote {}

  /** The kit counts as gear and motor, and half of the lift of a wooden hull counts. */
  record KitAsGear() implements FormulaNote {}

  /** The kit is subtracted from the gross load; what a person counts. */
  record KitSubtracted(double person) implements FormulaNote {}

  /**
   * Everyone hard to one side.
   *
   * @param best how many in the best seating of each number; zero where no more than in every one
   * @param full whether the places ended the test and not the boat
   */
  record SideLoad(double person, double heel, int best, boolean full) implements FormulaNote {}

  /** A weight under water over the side of the swamped boat. */
  record SwampedWeight(double person, double least, boolean full) implements FormulaNote {}

  /** A limit the set states, next to ours; whether it tightens ours. */
  record ComparedLimit(double value, double ours, String unit, boolean tightens)
      implements FormulaNote {}

  /** In words: what older records have. */
  record Stated(String words) implements FormulaNote {}

  static FormulaNote stated(String words) {
    return words.isBlank() ? NONE : new Stated(words);
  }

  default boolean isNone() {
    return this instanceof None;
  }
}
