package thwartwise.crew;

import thwartwise.checks.CheckQuestion;

/** What stops one more person. */
public sealed interface LimitingFactor {

  /** A check that is not met. */
  record ByCheck(CheckQuestion question) implements LimitingFactor {}

  /** A published formula; the rule set is blank where the formula names it. */
  record ByFormula(String ruleSet, String formula) implements LimitingFactor {}

  /** Every place is taken. */
  record NoPlaceLeft() implements LimitingFactor {}

  /** There are more seatings of so many people than are tried. */
  record TooManyWays(double ways, int people) implements LimitingFactor {}

  /** Words, in an older record. */
  record Stated(String words) implements LimitingFactor {}
}
