package thwartwise.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thwartwise.boat.Beaufort;
import thwartwise.boat.Waters;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.ValidWaters.WaterStatement.Kind;

/**
 * The waters for which the figures hold and do not hold, in terms that a person on the bank can
 * check.
 */
public final class ValidWaters {
  private ValidWaters() {}

  /**
   * Phrases to follow "holds for" and "not for", then whatever else must be known.
   *
   * @param rules as the waters tightened them
   */
  public static List<WaterStatement> of(RuleSet rules, Waters waters, UnitFormat units) {
    List<WaterStatement> all = new ArrayList<>();
    all.add(said(Kind.HOLDS_FOR, holds(rules, waters, units)));
    all.add(said(Kind.NOT_FOR, not(rules, units)));
    if (WaterAdjustedLimits.isCold(rules, waters)) {
      all.add(
          new WaterStatement(
              Kind.FURTHER,
              "The water is cold: nobody goes alone, help is within sight, and everybody is dressed for"
                  + " being in it"));
    }
    return all;
  }

  private static WaterStatement said(Kind kind, List<String> phrases) {
    return new WaterStatement(kind, String.join("; ", phrases));
  }

  private static List<String> holds(RuleSet rules, Waters waters, UnitFormat units) {
    return List.of(
        waves(WaterAdjustedLimits.wave(rules, waters), units),
        wind(rules),
        "a current up to " + current(rules.value("current-most"), units),
        washed(rules, waters, units),
        WaterAdjustedLimits.isCold(rules, waters)
            ? "water colder than " + degrees(rules, "degrees", units) + " too"
            : "water of " + degrees(rules, "degrees Celsius", units) + " or warmer",
        "up to " + distance(offshore(rules, waters), units) + " from the shore");
  }

  private static String height(double metres, UnitFormat units) {
    return units.either(
        String.format(Locale.ROOT, "%.2f m", metres), () -> units.height(metres, Side.DOWN));
  }

  private static String current(double speed, UnitFormat units) {
    return units.either(
        String.format(Locale.ROOT, "%.1f m/s", speed), () -> units.speed(speed, Side.DOWN));
  }

  private static String distance(double metres, UnitFormat units) {
    return units.either(
        String.format(Locale.ROOT, "%.0f m", metres), () -> units.distance(metres, Side.DOWN));
  }

  private static String degrees(RuleSet rules, String metric, UnitFormat units) {
    double cold = rules.value("cold-water");
    return units.either(
        String.format(Locale.ROOT, "%.0f ", cold) + metric, () -> units.temperature(cold, Side.UP));
  }

  private static String washed(RuleSet rules, Waters waters, UnitFormat units) {
    return waters.wash().orElse(false)
        ? "wash of passing boats up to " + height(rules.value("wave"), units)
        : "no wash of passing boats";
  }

  private static String waves(double wave, UnitFormat units) {
    String seen =
        wave <= 0.10
            ? " (a hand's breadth)"
            : wave <= 0.20 ? " (half way to the knee)" : wave <= 0.30 ? " (below the knee)" : "";
    return "waves up to " + height(wave, units) + seen + ", not breaking";
  }

  private static String wind(RuleSet rules) {
    Beaufort force = Beaufort.of(rules.value("wind-most"));
    return String.format(Locale.ROOT, "wind up to force %d (%s)", force.force(), force.looks());
  }

  private static List<String> not(RuleSet rules, UnitFormat units) {
    return List.of(
        "waves over " + height(rules.value("wave-most"), units) + " or breaking",
        "more wind, more current or farther out",
        "a weir, sluice or fall within reach",
        "sail, tow or a planing speed");
  }

  /** The farthest from the shore that is still spoken of, m; less in cold water. */
  public static double offshore(RuleSet rules, Waters waters) {
    return RoughWater.offshoreMost(rules, waters);
  }

  /**
   * One thing said of the waters a boat's figures hold for.
   *
   * @param words without what {@code kind} stands for
   */
  public record WaterStatement(Kind kind, String words) {
    private static final String HOLDS = "Holds for: ";
    private static final String NOT = "Not for: ";

    /** What it says of them. */
    public enum Kind {
      HOLDS_FOR,
      NOT_FOR,
      FURTHER
    }

    /** As a page tells it. */
    public String sentence() {
      return switch (kind) {
        case HOLDS_FOR -> HOLDS + words;
        case NOT_FOR -> NOT + words;
        case FURTHER -> words;
      };
    }
  }
}
