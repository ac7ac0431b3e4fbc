package thwartwise.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.MeasurementNote.Fact;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;

/**
 * Properties of the outline of any boat: it broadens toward the middle and narrows from there,
 * without a waist, and its heights begin at the lowest point of the bottom. Exchanged sections and
 * a height with a wrong sign show here where they do not show in a curve.
 */
final class OutlinePlausibility {
  private final BoatModel model;
  private final PlausibleLimits limits;
  private final List<Station> stations;
  private final List<PlausibilityFinding> found = new ArrayList<>();

  private OutlinePlausibility(BoatModel model, PlausibleLimits limits) {
    this.model = model;
    this.limits = limits;
    this.stations = model.boat().hull().stations();
  }

  static List<PlausibilityFinding> of(BoatModel model, PlausibleLimits limits) {
    OutlinePlausibility doubts = new OutlinePlausibility(model, limits);
    doubts.waist();
    doubts.lowest();
    return doubts.found;
  }

  /** The narrowest waist alone, because one false section makes two of them. */
  private void waist() {
    Waist deepest = new Waist(0, 0, 0, 0);
    for (Function<Station, List<Vector3>> side : sides()) {
      for (int point = 1; point < stations.get(0).port().size(); point++) {
        for (int i = 1; i + 1 < stations.size(); i++) {
          Waist here = at(side, point, i);
          deepest = here.depth() > deepest.depth() ? here : deepest;
        }
      }
    }
    if (deepest.depth() > limits.value("waist")) {
      add(deepest);
    }
  }

  /**
   * A station narrower than one aft of it and one forward of it.
   *
   * @param read half breadth there, m
   * @param neighbours the lesser of the greatest aft and the greatest forward of it, m
   */
  private record Waist(int station, int point, double read, double neighbours) {
    double depth() {
      return neighbours - read;
    }
  }

  private List<Function<Station, List<Vector3>>> sides() {
    return stations.stream().allMatch(Station::isSymmetric)
        ? List.of(Station::port)
        : List.of(Station::port, Station::starboard);
  }

  private Waist at(Function<Station, List<Vector3>> side, int point, int i) {
    double[] out =
        stations.stream().mapToDouble(s -> Math.abs(side.apply(s).get(point).y())).toArray();
    double aft = 0;
    double forward = 0;
    for (int j = 0; j < out.length; j++) {
      aft = j < i ? Math.max(aft, out[j]) : aft;
      forward = j > i ? Math.max(forward, out[j]) : forward;
    }
    return new Waist(i, point, out[i], Math.min(aft, forward));
  }

  private void add(Waist waist) {
    String station = StationPlausibility.name(stations, waist.station());
    found.add(
        PlausibilityQuestion.metres(Measure.STATION_WAIST, station)
            .atLeast(
                waist.read(),
                waist.neighbours(),
                limits.source("waist"),
                new MeasurementNote.Waist(waist.point(), stations.get(0).port().size()))
            .about(
                new PlausibilityId(PlausibilityTopic.STATION, station),
                model.boat().confirmedMeasurements(),
                StationPlausibility.readings(stations.get(waist.station()))));
  }

  private void lowest() {
    double least =
        stations.stream()
            .flatMap(s -> Stream.concat(s.port().stream(), s.starboard().stream()))
            .mapToDouble(Vector3::z)
            .min()
            .orElse(0);
    PlausibilityQuestion asked = PlausibilityQuestion.metres(Measure.LOWEST_POINT);
    MeasurementNote note = MeasurementNote.of(Fact.LOWEST_POINT_NOT_ZERO);
    add(
        PlausibilityId.of(PlausibilityTopic.LOWEST_POINT),
        least < 0
            ? asked.atLeast(
                least,
                -limits.value("lowest-point-below"),
                limits.source("lowest-point-below"),
                note)
            : asked.atMost(
                least, limits.value("lowest-point"), limits.source("lowest-point"), note));
  }

  private void add(PlausibilityId id, PlausibilityQuestion.Answer answer) {
    if (!answer.met()) {
      found.add(answer.about(id, model.boat().confirmedMeasurements()));
    }
  }
}
