package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thwartwise.boat.Waters;
import thwartwise.rules.RuleSet;
import thwartwise.rules.ValidWaters;

/** What is taken for granted of waters nobody described, and how waves enter the figures. */
final class WatersAssumed {
  private WatersAssumed() {}

  static List<String> texts(RuleSet rules, Waters waters) {
    List<String> all = new ArrayList<>();
    List<String> missing = missing(rules, waters);
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

  private static List<String> missing(RuleSet rules, Waters waters) {
    List<String> missing = new ArrayList<>();
    if (waters.waves().isEmpty()) {
      missing.add(figure(rules, "waves of %.2f m at most", "wave"));
    }
    if (waters.breaking().isEmpty()) {
      missing.add("no wave breaks");
    }
    if (waters.wind().isEmpty()) {
      missing.add(figure(rules, "wind of %.1f m/s at most", "wind"));
    }
    if (waters.current().isEmpty()) {
      missing.add(figure(rules, "a current of %.1f m/s at most", "current"));
    }
    if (waters.weir().isEmpty()) {
      missing.add("no weir in reach");
    }
    if (waters.wash().isEmpty()) {
      missing.add("no wash of passing boats");
    }
    if (waters.temperature().isEmpty()) {
      missing.add(figure(rules, "water of %.0f degrees Celsius or warmer", "cold-water"));
    }
    if (waters.offshore().isEmpty()) {
      missing.add(
          String.format(
              Locale.ROOT,
              "within %.0f m of the shore (%s)",
              ValidWaters.offshore(rules, waters),
              rules.limit("offshore-most").basis().word()));
    }
    return missing;
  }

  private static String figure(RuleSet rules, String words, String limit) {
    return String.format(Locale.ROOT, words, rules.value(limit))
        + " ("
        + rules.limit(limit).basis().word()
        + ")";
  }
}
