package thwartwise.report;

import thwartwise.checks.Margin;
import thwartwise.checks.Unit;
import thwartwise.page.FigureText;

/** A figure and its limit with their unit, both rounded to the cautious side. */
final class MarginWords {
  private MarginWords() {}

  static String value(Margin margin) {
    double shown = margin.unit().shown(margin.value().orElse(Double.NaN));
    int decimals = margin.unit().decimals();
    return words(
        margin.atLeast() ? FigureText.down(shown, decimals) : FigureText.up(shown, decimals),
        margin.unit());
  }

  static String limit(Margin margin) {
    double shown = margin.unit().shown(margin.limit());
    int decimals = margin.unit().decimals();
    return words(
        margin.atLeast() ? FigureText.up(shown, decimals) : FigureText.down(shown, decimals),
        margin.unit());
  }

  private static String words(String figure, Unit unit) {
    return FigureText.with(figure, figure.equals("1") ? unit.oneWord() : unit.word());
  }
}
