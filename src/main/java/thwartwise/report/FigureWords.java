package thwartwise.report;

import java.util.Locale;
import java.util.Optional;
import thwartwise.checks.Margin;
import thwartwise.checks.Unit;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/**
 * A figure and its limit in a phrase: the figure rounded to its unfavourable side, and the
 * requirement.
 */
public final class FigureWords {
  private FigureWords() {}

  /** The value with its unit, if there is one. */
  static String of(Margin margin, UnitFormat units) {
    double value = margin.value().orElseThrow();
    return shown(value, margin.unit(), margin.atLeast() ? Side.DOWN : Side.UP, units);
  }

  /** A figure rounded to a side. */
  static String shown(double si, Unit unit, Side side, UnitFormat units) {
    double shown = unit.shown(si);
    String metric = (side == Side.DOWN ? unit.down(shown) : unit.up(shown)) + " " + unit.symbol();
    return units.either(metric, () -> own(unit, si, side, units).orElse(metric));
  }

  /** A figure with units of its own in every system. */
  public static Optional<String> own(Unit unit, double si, Side side, UnitFormat units) {
    return switch (unit) {
      case METRE -> Optional.of(units.height(si, side));
      case KILOGRAM -> Optional.of(units.mass(si, side));
      case LITRE -> Optional.of(units.volume(si, side));
      case NEWTON -> Optional.of(units.force(si, side));
      case WATT -> Optional.of(units.power(si, side));
      case NEWTON_METRE -> Optional.of(units.moment(si, side));
      case MILLIMETRE -> Optional.of(units.rain(si, side));
      case DEGREE_PER_METRE -> Optional.of(units.twist(si, side));
      case KILOGRAM_PER_CUBIC_METRE ->
          units.system().isMetric() ? Optional.empty() : Optional.of(units.density(si));
      default -> Optional.empty();
    };
  }

  /** The figure and the requirement. */
  static String withLimit(Margin margin, UnitFormat units) {
    return String.format(
        Locale.ROOT,
        "%s, limit %s",
        of(margin, units),
        shown(margin.limit(), margin.unit(), margin.atLeast() ? Side.UP : Side.DOWN, units));
  }
}
