package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.measure.PrintableText;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for the stations, aft to forward, each from the keel up to the rail. Coordinates that
 * follow from the baseline and the middle line are not asked.
 */
final class StationQuestions {
  private final Replay replay;
  private final QuantityQuestions quantities;
  private final double length;
  private final int stations;
  private final int points;
  private final boolean alike;
  private final PlausibleLimits limits;

  StationQuestions(
      Replay replay,
      QuantityQuestions quantities,
      double length,
      int stations,
      int points,
      boolean alike,
      PlausibleLimits limits) {
    this.limits = limits;
    this.replay = replay;
    this.quantities = quantities;
    this.length = length;
    this.stations = stations;
    this.points = points;
    this.alike = alike;
  }

  List<Station> stations() {
    StationFairnessQuestions outOfLine =
        new StationFairnessQuestions(replay, quantities, limits, alike);
    List<Station> done = new ArrayList<>();
    for (int number = 1; number <= stations; number++) {
      done.add(station(number, List.copyOf(done)));
      done = outOfLine.corrected(done, number == stations);
    }
    return List.copyOf(done);
  }

  private Station station(int number, List<Station> before) {
    String key = "hull.station." + number;
    StationRow row = new StationRow(number, stations, points);
    String name = name(key, number, before, row);
    String subject = "Station " + number + " " + WordQuestions.quoted(name);
    StationSlips slips =
        new StationSlips(
            quantities, "Station " + number + " \"" + name + "\"", length, points, before);
    boolean last = number == stations;
    LengthwiseQuestions along =
        new LengthwiseQuestions(replay, quantities, key, subject, slips, last, row);
    BreadthWarnings breadths = new BreadthWarnings(quantities, limits, length, before, last);
    TransverseQuestions across =
        new TransverseQuestions(replay, quantities, length, subject, slips, breadths, row);
    boolean upright = along.upright();
    List<Vector3> port = new ArrayList<>();
    for (int point = 1; point <= points; point++) {
      double x = along.x(upright, point, port);
      port.add(across.port(key + ".point." + point, point, x, port));
    }
    return alike
        ? Station.mirrored(name, port)
        : new Station(name, port, across.starboard(key + ".starboard.", port));
  }

  private static final List<String> BASELINE =
      List.of(
          "Level the boat, stretch a line along the middle at the lowest point of the",
          "bottom: the baseline. Stations go from the aft end (number 1) forward, each",
          "in a row with ; between: how far forward, then from keel to rail how far out",
          "and how high. A name may stand first. Enter: each value is asked by itself.");

  /** The section measured last is drawn, so that a slip is seen before the next station. */
  private static String[] drawn(List<Station> before, StationRow row) {
    List<String> lines = new ArrayList<>(before.isEmpty() ? BASELINE : drawn(before));
    lines.addAll(row.ofRakedEnd());
    return lines.toArray(String[]::new);
  }

  private static List<String> drawn(List<Station> before) {
    Station last = before.get(before.size() - 1);
    List<String> lines = new ArrayList<>();
    lines.add(
        "Station " + before.size() + " " + WordQuestions.quoted(last.name()) + ", seen from aft:");
    lines.addAll(SectionSketch.of(last.port(), last.starboard()));
    return lines;
  }

  /** The name of a station, in a list whose rows need not begin with one. */
  private String name(String key, int number, List<Station> before, StationRow row) {
    String usual = number == 1 ? "aft end" : number == stations ? "fore end" : "station " + number;
    return replay.ask(
        key + ".name",
        () ->
            row.entry(
                WordQuestions.label(
                        key + ".name",
                        "Station " + number + " of " + stations + ", name",
                        before.stream().map(Station::name).toList())
                    .unlessAmbiguous(StationQuestions::figureOrName)
                    .unless(StationQuestions::noName)
                    .how(drawn(before, row))
                    .why("The name stands in messages about this station.")
                    .orElse(usual, usual)));
  }

  /** A figure that is followed by words. */
  private static Optional<Warning> figureOrName(String typed) {
    return typed.strip().matches("[-+.,]?\\d.*") && !WordQuestions.isAnotherAnswer(typed)
        ? Optional.of(
            new Warning(
                PrintableText.excerpt(typed.strip())
                    + " begins with a figure: is it a name? How far forward the station stands is"
                    + " typed as a length alone.",
                Optional.empty(),
                true))
        : Optional.empty();
  }

  private static Optional<String> noName(String typed) {
    return WordQuestions.isAnotherAnswer(typed)
        ? Optional.of(
            PrintableText.excerpt(typed)
                + " is no name of a station. Type its name, or the first figure of its row.")
        : Optional.empty();
  }
}
