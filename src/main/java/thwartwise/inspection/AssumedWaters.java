package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import thwartwise.boat.Waters;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.RuleSet;
import thwartwise.rules.ValidWaters;

/** The assumptions for waters that nobody described, and how waves enter the figures. */
final class AssumedWaters {
  private AssumedWaters() {}

  static List<String> texts(RuleSet rules, Waters waters, UnitFormat units) {
    List<String> all = new ArrayList<>();
    List<String> missing = missing(rules, waters, units);
    if (!missing.isEmpty()) {
      all.add("Not stated, so taken as sheltered: " + String.join("; ", missing) + ".");
    }
    all.add(
        String.format(
            Locale.ROOT,
            "A wave counts only as freeboard: at rest its whole height must be left, with everyone"
                + " to one side %.1f of it (%s). How the boat moves in it is not worked out.",
            rules.value("wave-share-heeled"),
            rules.limit("wave-share-heeled").basis().word()));
    return all;
  }

  private static List<String> missing(RuleSet rules, Waters waters, UnitFormat units) {
    List<String> missing = new ArrayList<>();
    if (waters.waves().isEmpty()) {
      missing.add(
          figure(
              rules,
              "waves of %s at most",
              "wave",
              v ->
                  units.either(
                      String.format(Locale.ROOT, "%.2f m", v), () -> units.height(v, Side.DOWN))));
    }
    if (waters.breaking().isEmpty()) {
      missing.add("no wave breaks");
    }
    if (waters.wind().isEmpty()) {
      missing.add(
          figure(
              rules,
              "wind of %s at most",
              "wind",
              v ->
                  units.either(
                      String.format(Locale.ROOT, "%.1f m/s", v), () -> units.speed(v, Side.DOWN))));
    }
    if (waters.current().isEmpty()) {
      missing.add(
          figure(
              rules,
              "a current of %s at most",
              "current",
              v ->
                  units.either(
                      String.format(Locale.ROOT, "%.1f m/s", v), () -> units.speed(v, Side.DOWN))));
    }
    if (waters.weir().isEmpty()) {
      missing.add("no weir in reach");
    }
    if (waters.wash().isEmpty()) {
      missing.add("no wash of passing boats");
    }
    if (waters.temperature().isEmpty()) {
      missing.add(
          figure(
              rules,
              "water of %s or warmer",
              "cold-water",
              v ->
                  units.either(
                      String.format(Locale.ROOT, "%.0f degrees Celsius", v),
                      () -> units.temperature(v, Side.UP))));
    }
    if (waters.offshore().isEmpty()) {
      missing.add(
          String.format(
              "within %s of the shore (%s)",
              distance(ValidWaters.offshore(rules, waters), units),
              rules.limit("offshore-most").basis().word()));
    }
    return missing;
  }

  private static String distance(double metres, UnitFormat units) {
    return units.either(
        String.format(Locale.ROOT, "%.0f m", metres), () -> units.distance(metres, Side.DOWN));
  }

  private static String figure(
      RuleSet rules, String words, String limit, DoubleFunction<String> shown) {
    return String.format(words, shown.apply(rules.value(limit)))
        + " ("
        + rules.limit(limit).basis().word()
        + ")";
  }
}
