package thwartwise.checks;

import java.util.Locale;

/** A figure and its limit in a phrase: what there is rounded to its bad side, what is needed. */
public final class FigureWords {
  private FigureWords() {}

  /** The value with its unit; only where there is one. */
  static String of(Margin margin) {
    Unit unit = margin.unit();
    double has = unit.shown(margin.value().orElseThrow());
    return (margin.atLeast() ? unit.down(has) : unit.up(has)) + " " + unit.symbol();
  }

  /** What was asked, what came of it and what is needed. */
  public static String of(Reading reading) {
    Margin margin = reading.margin();
    String check = CheckWords.of(reading.question());
    if (margin.value().isEmpty()) {
      return check + ": " + (reading.note().isBlank() ? "no steady rest" : reading.note());
    }
    if (margin.turnsOver()) {
      return check + ": it turns over";
    }
    Unit unit = margin.unit();
    double limit = unit.shown(margin.limit());
    return String.format(
        Locale.ROOT,
        "%s: %s, %s %s %s",
        check,
        of(margin),
        margin.atLeast() ? "needs at least" : "must not exceed",
        margin.atLeast() ? unit.up(limit) : unit.down(limit),
        unit.symbol());
  }
}
