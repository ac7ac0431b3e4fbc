package thwartwise.plausibility;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;

/** Stations that lie out of line with their neighbours, one finding each. */
final class StationPlausibility {
  private StationPlausibility() {}

  static List<PlausibilityFinding> of(BoatModel model, PlausibleLimits limits) {
    List<Station> stations = model.boat().hull().stations();
    Map<Integer, FairnessOutlier> worst = new LinkedHashMap<>();
    for (FairnessOutlier out : limits.stations().outOfLine(stations)) {
      worst.merge(out.station(), out, (a, b) -> b.factor() > a.factor() ? b : a);
    }
    List<PlausibilityFinding> found = new ArrayList<>();
    worst.forEach(
        (i, out) ->
            found.add(
                answer(stations, out, limits)
                    .about(
                        new PlausibilityId(PlausibilityTopic.STATION, name(stations, i)),
                        model.boat().confirmedMeasurements(),
                        readings(stations.get(i)))));
    return found;
  }

  private static PlausibilityQuestion.Answer answer(
      List<Station> stations, FairnessOutlier out, PlausibleLimits limits) {
    boolean low = out.value() < out.fair();
    PlausibilityQuestion asked =
        PlausibilityQuestion.metres(Measure.STATION_FAIRNESS, name(stations, out.station()));
    return new PlausibilityQuestion.Answer(
        asked,
        out.value(),
        out.fair(),
        low,
        false,
        limits.source("station-off-ratio"),
        new MeasurementNote.OutOfLine(
            out.port(),
            out.point(),
            stations.get(out.station()).port().size(),
            out.direction(),
            out.slip(),
            out.meant()));
  }

  /** All readings of a station, because a person who confirmed one looked at all of it. */
  static String readings(Station station) {
    Stream<Vector3> points =
        station.isSymmetric()
            ? station.port().stream()
            : Stream.concat(station.port().stream(), station.starboard().stream());
    return points
        .map(p -> String.format(Locale.ROOT, "%.3f %.3f", p.y() + 0.0, p.z() + 0.0))
        .collect(Collectors.joining(", "));
  }

  /** Its name, or its number where the name is not unique. */
  static String name(List<Station> stations, int i) {
    String name = stations.get(i).name();
    long same = stations.stream().filter(s -> s.name().equals(name)).count();
    return name.isBlank() || same > 1 ? "number " + (i + 1) : name;
  }
}
