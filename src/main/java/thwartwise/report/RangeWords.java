package thwartwise.report;

import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Unit;
import thwartwise.loadcase.LoadCase;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.RangeBar;
import thwartwise.spread.BoatSpread;
import thwartwise.spread.FigureSpread;
import thwartwise.uncertainty.CoverageInterval;

/** The ranges in which figures of a boat lie: as words, and as bars against their limits. */
record RangeWords(Optional<BoatSpread> spread, UnitFormat units) {

  /**
   * A finding with the range of its figure, SI.
   *
   * @param figure the figure from which its spread was computed
   */
  record Ranged(Margin margin, CoverageInterval range, FigureSpread figure) {
    /**
     * The finding with its range. If an act is worst for another crew, the range is that of the
     * other crew's figure.
     */
    static Ranged of(Margin margin, FigureSpread figure) {
      double by = margin.value().getAsDouble() - figure.margin().value().getAsDouble();
      CoverageInterval range = figure.range();
      return new Ranged(margin, possible(margin.unit(), range, by), figure);
    }

    /**
     * Limits a second-order range, which may reach a heel below zero or a boat that has capsized.
     */
    private static CoverageInterval possible(Unit unit, CoverageInterval range, double by) {
      boolean signed = unit == Unit.METRE || unit == Unit.KILOGRAM;
      double least = signed ? Double.NEGATIVE_INFINITY : 0;
      double most = unit == Unit.DEGREE ? Math.PI : Double.POSITIVE_INFINITY;
      return new CoverageInterval(
          Math.max(least, Math.min(most, range.low() + by)),
          Math.max(least, Math.min(most, range.high() + by)));
    }

    /** Whether the share of boats was counted for this figure. */
    boolean isCounted() {
      return margin.equals(figure.margin());
    }
  }

  /** The range; empty where nobody knows how far the figure may be off, or there is none. */
  Optional<Ranged> of(Finding finding) {
    boolean loaded = finding.loadCase().kind() == LoadCase.Kind.AS_LOADED;
    return spread
        .flatMap(s -> s.figure(finding.question(), loaded))
        .filter(f -> f.isKnown() && f.margin().value().isPresent())
        .filter(f -> finding.value().isPresent() && !finding.margin().turnsOver())
        .map(f -> Ranged.of(finding.margin(), f));
  }

  /** The range in words: "0.21 to 0.29 m". */
  String range(Ranged ranged) {
    return shown(ranged.margin(), ranged.range().low(), Side.DOWN)
        + " to "
        + shown(ranged.margin(), ranged.range().high(), Side.UP);
  }

  private String shown(Margin margin, double si, Side side) {
    Margin end =
        new Margin(OptionalDouble.of(si), margin.limit(), side == Side.DOWN, margin.unit());
    return MarginWords.value(end, units);
  }

  RangeBar bar(Ranged ranged) {
    Margin margin = ranged.margin();
    double limit = margin.limit();
    double low = ranged.range().low();
    double high = ranged.range().high();
    return new RangeBar(
        margin.atLeast() ? low - limit : limit - high,
        margin.room(),
        margin.atLeast() ? high - limit : limit - low,
        "from "
            + range(ranged)
            + ", as measured "
            + MarginWords.value(margin, units)
            + ", limit "
            + MarginWords.limit(margin, units)
            + (ranged.isCounted() ? met(ranged.figure().share()) : ""));
  }

  private static String met(double share) {
    return "; met in " + (int) Math.floor(100 * share + 1e-9) + " of 100 boats measured like this";
  }
}
