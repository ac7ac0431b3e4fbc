package thwartwise.walk;

import java.time.LocalDate;
import java.util.Optional;
import thwartwise.inspection.QuickInspection;
import thwartwise.measure.Dimension;
import thwartwise.measure.UnitSystem;
import thwartwise.rules.RuleSet;
import thwartwise.walk.engine.ReplayResult.PartialBoat;

/** The line between two questions that says what the boat can do as far as it is known. */
public final class InterimSummary {
  /** Printed once, before the first summary. */
  public static final String FIRST =
      "A line that begins with \"So far\" checks only a few limits and promises nothing;"
          + " the answer at the end checks all of them and may be fewer people.";

  private static final String[] ADULTS = {
    "nobody yet",
    "one adult",
    "two adults",
    "three adults",
    "four adults",
    "five adults",
    "six adults",
    "seven adults",
    "eight adults"
  };

  private InterimSummary() {}

  /** The summary, or empty if nothing can be said yet. */
  public static Optional<String> of(PartialBoat known, RuleSet rules, LocalDate today) {
    return QuickInspection.of(known.boat(), rules, today).map(look -> text(look, known.units()));
  }

  static String text(QuickInspection look, UnitSystem units) {
    return "So far: "
        + floats(look.freeboard(), units)
        + look.carried().map(InterimSummary::carried).orElse("")
        + ".";
  }

  private static String floats(double freeboard, UnitSystem units) {
    return freeboard > 0
        ? "empty it floats with "
            + units.show(down(freeboard, units), Dimension.LENGTH)
            + " of side"
        : "its lowest edge is under the water, even with nobody aboard";
  }

  /** Rounds what the boat has down to whole centimetres or half inches. */
  private static double down(double freeboard, UnitSystem units) {
    double step = units.isMetric() ? 0.01 : 0.0127;
    return step * Math.floor(freeboard / step + 1e-9);
  }

  private static String carried(QuickInspection.Carried carried) {
    if (carried.dry() + carried.swamped() == 0) {
      return "; at a first look nobody yet, dry or swamped";
    }
    return "; at a first look "
        + atMost(carried.dry())
        + " dry, "
        + atMost(carried.swamped())
        + " when swamped";
  }

  /**
   * The upper bound for people. The whole inspection checks more than this summary and may allow
   * fewer.
   */
  private static String atMost(int adults) {
    return (adults == 0 ? "" : "at most ") + ADULTS[adults];
  }
}
