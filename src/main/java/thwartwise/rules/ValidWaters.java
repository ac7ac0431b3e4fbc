package thwartwise.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thwartwise.boat.Beaufort;
import thwartwise.boat.Waters;

/** For which waters the figures hold and for which not, in words a person on the bank can check. */
public final class ValidWaters {
  private ValidWaters() {}

  /**
   * Phrases to follow "holds for" and "not for", then whatever else must be known.
   *
   * @param rules as the waters tightened them
   */
  public static List<String> words(RuleSet rules, Waters waters) {
    List<String> words = new ArrayList<>();
    words.add("Holds for: " + String.join("; ", holds(rules, waters)));
    words.add("Not for: " + String.join("; ", not(rules, waters)));
    if (WaterAdjustedLimits.isCold(rules, waters)) {
      words.add(
          "The water is cold: nobody goes alone, help is within sight, and everybody is dressed for"
              + " being in it");
    }
    return words;
  }

  private static List<String> holds(RuleSet rules, Waters waters) {
    return List.of(
        waves(WaterAdjustedLimits.wave(rules, waters)),
        wind(rules),
        String.format(Locale.ROOT, "a current up to %.1f m/s", rules.value("current-most")),
        washed(rules, waters),
        String.format(
            Locale.ROOT,
            WaterAdjustedLimits.isCold(rules, waters)
                ? "water colder than %.0f degrees too"
                : "water of %.0f degrees Celsius or warmer",
            rules.value("cold-water")),
        String.format(Locale.ROOT, "up to %.0f m from the shore", offshore(rules, waters)));
  }

  private static String washed(RuleSet rules, Waters waters) {
    return waters.wash().orElse(false)
        ? String.format(Locale.ROOT, "wash of passing boats up to %.2f m", rules.value("wave"))
        : "no wash of passing boats";
  }

  private static String waves(double wave) {
    String seen =
        wave <= 0.10
            ? " (a hand's breadth)"
            : wave <= 0.20 ? " (half way to the knee)" : wave <= 0.30 ? " (below the knee)" : "";
    return String.format(Locale.ROOT, "waves up to %.2f m%s, not breaking", wave, seen);
  }

  private static String wind(RuleSet rules) {
    Beaufort force = Beaufort.of(rules.value("wind-most"));
    return String.format(Locale.ROOT, "wind up to force %d (%s)", force.force(), force.looks());
  }

  private static List<String> not(RuleSet rules, Waters waters) {
    return List.of(
        String.format(Locale.ROOT, "waves over %.2f m or breaking", rules.value("wave-most")),
        "more wind, more current or farther out",
        "a weir, sluice or fall within reach",
        "sail, tow or a planing speed");
  }

  /** The farthest from the shore that is still spoken of, m; less in cold water. */
  public static double offshore(RuleSet rules, Waters waters) {
    return RoughWater.offshoreMost(rules, waters);
  }
}
