package thwartwise.walk.questions;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import thwartwise.geometry.Vector3;
import thwartwise.hull.LineName;
import thwartwise.hull.Station;
import thwartwise.walk.engine.PlausibleRange;
import thwartwise.walk.engine.QuantityQuestions;

/**
 * Values that a station cannot have, given the stations aft of it.
 *
 * @param where the station with its number and name, to begin a message with
 * @param before the stations aft of it
 */
record StationSlips(
    QuantityQuestions quantities, String where, double length, int points, List<Station> before) {
  /** The error allowed between the stations and the length overall: rub rail, tape. */
  private static final double LEEWAY = 0.10;

  /** A point this near the aft end is at it. */
  private static final double AT_THE_END = 0.005;

  StationSlips starboard() {
    return new StationSlips(quantities, where + ", starboard", length, points, before);
  }

  boolean isFirst() {
    return before.isEmpty();
  }

  boolean isRail(int point) {
    return point == points;
  }

  String pointName(int point) {
    return LineName.of(point - 1, points);
  }

  PlausibleRange alongTheBoat() {
    return quantities.length(0, length + LEEWAY, "length overall and a hand's breadth");
  }

  /** Refuses a point that is not forward of the same line at the station before. */
  Optional<String> notForward(int point, double x) {
    if (isFirst() || x > previous().port().get(point - 1).x()) {
      return Optional.empty();
    }
    return Optional.of(
        "%s: the %s (%s) is not forward of the %s of station %s \"%s\" (%s). %s"
            .formatted(
                where,
                pointName(point),
                quantities.show(x),
                pointName(point),
                before.size(),
                previous().name(),
                quantities.show(previous().port().get(point - 1).x()),
                "Measure both from the aft end, or go back."));
  }

  /** The same for an upright station. */
  Optional<String> notForwardOfAll(double x) {
    return IntStream.rangeClosed(1, points)
        .boxed()
        .max(Comparator.comparing(point -> previous().port().get(point - 1).x()))
        .flatMap(point -> notForward(point, x));
  }

  /** Refuses a first station without a point at the aft end, which is the origin. */
  Optional<String> awayFromTheAftEnd(int point, double x, List<Vector3> sofar) {
    double least = Math.min(x, sofar.stream().mapToDouble(Vector3::x).min().orElse(x));
    if (!isFirst() || !isRail(point) || least <= AT_THE_END) {
      return Optional.empty();
    }
    return Optional.of(
        "%s: no point of it lies at the aft end; the aftmost is %s forward. %s"
            .formatted(
                where, quantities.show(least), "Measure from the aftmost point, or go back."));
  }

  /** Refuses a last station away from the fore end, because the bow would be cut off. */
  Optional<String> shortOfTheEnd(double x, List<Vector3> sofar) {
    double most =
        DoubleStream.concat(DoubleStream.of(x), sofar.stream().mapToDouble(Vector3::x))
            .max()
            .orElse(x);
    if (most >= length - LEEWAY) {
      return Optional.empty();
    }
    return Optional.of(
        "%s: it ends at %s, but the length overall is %s. %s"
            .formatted(
                where,
                quantities.show(most),
                quantities.show(length),
                "The last station stands at the fore end; if the length is wrong, type list,"
                    + " then change and its number."));
  }

  /** Refuses a rail that is not the highest line of the hull. */
  Optional<String> railBelow(int point, double z, List<Vector3> sofar) {
    if (!isRail(point)) {
      return Optional.empty();
    }
    return IntStream.range(0, sofar.size())
        .boxed()
        .max(Comparator.comparing(i -> sofar.get(i).z()))
        .filter(i -> sofar.get(i).z() > z)
        .map(
            i ->
                "%s: the rail (%s) is lower than the %s (%s). %s"
                    .formatted(
                        where,
                        quantities.show(z),
                        pointName(i + 1),
                        quantities.show(sofar.get(i).z()),
                        "Measure both up from the baseline, or go back and swap them."));
  }

  private Station previous() {
    return before.get(before.size() - 1);
  }
}
