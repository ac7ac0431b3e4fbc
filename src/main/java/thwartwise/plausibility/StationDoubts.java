package thwartwise.plausibility;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import thwartwise.boat.Craft;
import thwartwise.boat.LineName;
import thwartwise.boat.Station;
import thwartwise.checks.Unit;

/** Stations that lie out of line with their neighbours, one finding each. */
final class StationDoubts {
  private StationDoubts() {}

  static List<PlausibilityFinding> of(Craft craft, PlausibleLimits limits) {
    List<Station> stations = craft.boat().hull().stations();
    Map<Integer, OutOfLine> worst = new LinkedHashMap<>();
    for (OutOfLine out : limits.stations().outOfLine(stations)) {
      worst.merge(out.station(), out, (a, b) -> b.factor() > a.factor() ? b : a);
    }
    List<PlausibilityFinding> found = new ArrayList<>();
    worst.forEach(
        (i, out) ->
            found.add(
                answer(stations, out, limits)
                    .about(new DoubtId(Topic.STATION, name(stations, i)), craft.boat().kept())));
    return found;
  }

  private static Asked.Answer answer(
      List<Station> stations, OutOfLine out, PlausibleLimits limits) {
    boolean low = out.value() < out.fair();
    Asked asked =
        new Asked(
            "station \"" + name(stations, out.station()) + "\" against its neighbours",
            Unit.METRE,
            Asked.MEASURED);
    return new Asked.Answer(
        asked,
        out.value(),
        out.fair(),
        low,
        false,
        limits.source("station-off-ratio"),
        words(stations, out));
  }

  /** Which reading, what is odd about it, and what would be in line. */
  private static String words(List<Station> stations, OutOfLine out) {
    int points = stations.get(out.station()).port().size();
    return String.format(
        Locale.ROOT,
        "%s%s, %s: %s In line would be about %.2f m; measure it again",
        out.port() ? "" : "starboard ",
        LineName.of(out.point(), points),
        out.direction().word(),
        ended(out.slip().words()),
        out.meant());
  }

  private static String ended(String words) {
    return words.endsWith("?") ? words : words + ".";
  }

  /** Its name, or its number where the name does not tell it from the others. */
  static String name(List<Station> stations, int i) {
    String name = stations.get(i).name();
    long same = stations.stream().filter(s -> s.name().equals(name)).count();
    return name.isBlank() || same > 1 ? "number " + (i + 1) : name;
  }
}
