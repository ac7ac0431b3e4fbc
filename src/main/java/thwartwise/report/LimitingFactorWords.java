package thwartwise.report;

import java.util.Locale;
import thwartwise.crew.LimitingFactor;
import thwartwise.measure.QuantityText;

/** What stops one more person, in words. */
public final class LimitingFactorWords {
  private LimitingFactorWords() {}

  public static String of(LimitingFactor factor) {
    if (factor instanceof LimitingFactor.ByCheck check) {
      return CheckWords.of(check.question());
    }
    if (factor instanceof LimitingFactor.ByFormula formula) {
      return formula.ruleSet().isEmpty()
          ? formula.formula()
          : formula.ruleSet() + ": " + formula.formula();
    }
    if (factor instanceof LimitingFactor.TooManyWays many) {
      return String.format(
          Locale.ROOT,
          "too many ways to sit (%.0f for %s): give fewer places, or fewer people a place",
          many.ways(),
          QuantityText.people(many.people()));
    }
    return factor instanceof LimitingFactor.Stated stated
        ? stated.words()
        : "no place for another person";
  }
}
