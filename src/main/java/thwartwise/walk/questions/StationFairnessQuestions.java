package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thwartwise.geometry.Vector3;
import thwartwise.hull.LineName;
import thwartwise.hull.ReadingDirection;
import thwartwise.hull.Station;
import thwartwise.hull.TapeSlip;
import thwartwise.measure.ChoiceReader;
import thwartwise.plausibility.FairnessOutlier;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.report.TapeSlipWords;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions about a reading that is out of line with the stations on either side, asked once, as
 * soon as those are known.
 */
final class StationFairnessQuestions {
  private final Replay replay;
  private final QuantityQuestions quantities;
  private final PlausibleLimits limits;
  private final boolean alike;
  private final Set<String> asked = new HashSet<>();

  StationFairnessQuestions(
      Replay replay, QuantityQuestions quantities, PlausibleLimits limits, boolean alike) {
    this.replay = replay;
    this.quantities = quantities;
    this.limits = limits;
    this.alike = alike;
  }

  /** The stations so far, with corrected readings. */
  List<Station> corrected(List<Station> sofar, boolean whole) {
    List<Station> stations = sofar;
    Optional<FairnessOutlier> next = next(stations, whole);
    while (next.isPresent()) {
      FairnessOutlier out = next.get();
      asked.add(key(out));
      if (isMisread(out, stations)) {
        stations = corrected(out, stations);
      }
      next = next(stations, whole);
    }
    return new ArrayList<>(stations);
  }

  private Optional<FairnessOutlier> next(List<Station> stations, boolean whole) {
    List<FairnessOutlier> found =
        whole ? limits.stations().outOfLine(stations) : limits.stations().outOfLineSoFar(stations);
    return found.stream().filter(out -> !asked.contains(key(out))).findFirst();
  }

  private static String key(FairnessOutlier out) {
    return "hull.outOfLine.%d.%s%d.%s"
        .formatted(
            out.station() + 1,
            out.port() ? "" : "starboard.",
            out.point() + 1,
            out.direction() == ReadingDirection.HEIGHT ? "z" : "y");
  }

  private boolean isMisread(FairnessOutlier out, List<Station> stations) {
    Station station = stations.get(out.station());
    String point = LineName.of(out.point(), station.port().size());
    String side = out.port() ? "" : "starboard ";
    String subject =
        "Station %d, %s%s, %s".formatted(out.station() + 1, side, point, out.direction().word());
    return replay.ask(
        WordQuestions.choice(
                WordQuestions.bound(key(out), quantities.show(out.value())),
                subject,
                ChoiceReader.of(true, "mend", "yes", "y").or(false, "keep", "no", "n"))
            .how(
                "%s is %s".formatted(quantities.show(out.value()), TapeSlipWords.of(out.slip())),
                mended(out),
                "keep: it stays as typed, and its reason is asked for at the end.")
            .why("A wrong reading describes another boat, most often a larger one."));
  }

  private String mended(FairnessOutlier out) {
    return out.slip() == TapeSlip.UNKNOWN || out.slip() == TapeSlip.REPEATED
        ? "mend: %s is taken, the nearest in line; better go back and measure it again."
            .formatted(quantities.show(out.meant()))
        : "mend: %s is taken.".formatted(quantities.show(out.meant()));
  }

  private List<Station> corrected(FairnessOutlier out, List<Station> stations) {
    List<Station> right = new ArrayList<>(stations);
    Station station = stations.get(out.station());
    List<Vector3> side = new ArrayList<>(out.port() ? station.port() : station.starboard());
    double other = out.value();
    side.set(out.point(), read(side.get(out.point()), out, out.meant()));
    if (out.slip() == TapeSlip.SWAPPED) {
      side.set(out.point() + 1, read(side.get(out.point() + 1), out, other));
    }
    right.set(out.station(), with(station, side, out.port()));
    return right;
  }

  private Station with(Station station, List<Vector3> side, boolean port) {
    if (alike) {
      return Station.mirrored(station.name(), side);
    }
    return port
        ? new Station(station.name(), side, station.starboard())
        : new Station(station.name(), station.port(), side);
  }

  private static Vector3 read(Vector3 point, FairnessOutlier out, double value) {
    return out.direction() == ReadingDirection.HEIGHT
        ? Vector3.of(point.x(), point.y(), value)
        : Vector3.of(point.x(), out.port() ? value : -value, point.z());
  }
}
