package thwartwise.crew;

import thwartwise.checks.CheckWords;

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
    return factor instanceof LimitingFactor.Stated stated
        ? stated.words()
        : "no place for another person";
  }
}
