package thwartwise.report;

import thwartwise.checks.Margin;
import thwartwise.checks.Unit;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;

/** A figure and its limit in the reader's units, both rounded to the cautious side. */
final class MarginWords {
  private MarginWords() {}

  static String value(Margin margin, UnitFormat units) {
    return words(
        margin.value().orElse(Double.NaN), margin, margin.atLeast() ? Side.DOWN : Side.UP, units);
  }

  static String limit(Margin margin, UnitFormat units) {
    return words(margin.limit(), margin, margin.atLeast() ? Side.UP : Side.DOWN, units);
  }

  /** The limit with the way it is meant. */
  static String asked(Margin margin, UnitFormat units) {
    return (margin.atLeast() ? "at least " : "at most ") + limit(margin, units);
  }

  private static String words(double si, Margin margin, Side side, UnitFormat units) {
    return FigureWords.own(margin.unit(), si, side, units)
        .orElseGet(() -> plain(margin.unit(), si, side));
  }

  private static String plain(Unit unit, double si, Side side) {
    double shown = unit.shown(si);
    String figure =
        side == Side.DOWN
            ? Rounding.down(shown, unit.decimals())
            : Rounding.up(shown, unit.decimals());
    if (unit == Unit.DEGREE) {
      return figure + "\u00b0";
    }
    return FigureText.with(figure, figure.equals("1") ? unit.oneWord() : unit.word());
  }
}
