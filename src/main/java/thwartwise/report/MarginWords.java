package thwartwise.report;

import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Unit;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;

/** A figure and its limit in the reader's units, both rounded to the cautious side. */
final class MarginWords {
  /** The greatest number of further decimals: a hundredth of a millimetre for metres and inches. */
  private static final int FINEST = 3;

  private static final double HOUR = 3600;
  private static final double DAY = 24 * HOUR;

  /** From here on a time is told in whole hours, s. */
  private static final double LONG = 3 * HOUR;

  /** From here on in whole days, s. */
  private static final double DAYS = 2 * DAY;

  private MarginWords() {}

  /**
   * As many decimals as it takes to tell the figure from its limit; a smaller difference is not
   * shown.
   */
  static UnitFormat distinguishing(Margin margin, UnitFormat units) {
    UnitFormat shown = units;
    for (int step = 0; step <= FINEST; step++) {
      if (!value(margin, shown).equals(limit(margin, shown))) {
        return shown;
      }
      shown = shown.oneStepFiner();
    }
    return units;
  }

  static String value(Margin margin, UnitFormat units) {
    return words(
        margin.value().orElse(Double.NaN), margin, margin.atLeast() ? Side.DOWN : Side.UP, units);
  }

  /** A figure by itself, without a note that says on which side of the water a negative one is. */
  static String ofTheWater(Measure measure, Margin margin, UnitFormat units) {
    double value = margin.value().orElse(Double.NaN);
    boolean below = measure == Measure.LOWER_END;
    boolean height = below || measure == Measure.HIGHER_END || measure == Measure.FREEBOARD;
    if (!height || !(value < 0)) {
      return value(margin, units);
    }
    Side side = margin.atLeast() ? Side.UP : Side.DOWN;
    return units.height(-value, side) + (below ? " above the water" : " under the water");
  }

  static String limit(Margin margin, UnitFormat units) {
    return words(margin.limit(), margin, margin.atLeast() ? Side.UP : Side.DOWN, units);
  }

  /** The limit and its direction. */
  static String asked(Margin margin, UnitFormat units) {
    return (margin.atLeast() ? "at least " : "at most ") + limit(margin, units);
  }

  private static String words(double si, Margin margin, Side side, UnitFormat units) {
    return FigureWords.own(margin.unit(), si, side, units)
        .orElseGet(() -> plain(margin.unit(), si, side, units.finer()));
  }

  /** Of hours and days nobody counts the minutes. */
  private static String time(double seconds, Side side) {
    if (Double.isInfinite(seconds)) {
      return "without end";
    }
    boolean days = seconds >= DAYS;
    double whole = seconds / (days ? DAY : HOUR);
    String figure = side == Side.DOWN ? Rounding.down(whole, 0) : Rounding.up(whole, 0);
    return FigureText.with(figure, days ? "days" : "hours");
  }

  private static String plain(Unit unit, double si, Side side, int finer) {
    if (unit == Unit.MINUTE && si >= LONG) {
      return time(si, side);
    }
    double shown = unit.shown(si);
    int decimals = unit.decimals() + finer;
    String figure =
        side == Side.DOWN ? Rounding.down(shown, decimals) : Rounding.up(shown, decimals);
    if (unit == Unit.DEGREE) {
      return figure + "\u00b0";
    }
    return FigureText.with(figure, figure.equals("1") ? unit.oneWord() : unit.word());
  }
}
