package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import thwartwise.geometry.Vector3;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;

/** Questions for the half-breadths and heights of the points of one station. */
record TransverseQuestions(
    Replay replay,
    QuantityQuestions quantities,
    double length,
    String subject,
    StationSlips slips,
    BreadthWarnings breadths,
    StationRow row) {
  /** The greatest height of the rail in an open boat of this size. */
  private static final double HIGHEST = 1.5;

  /**
   * The port side. The keel lies on the middle line, so its half-breadth is zero and is not asked.
   */
  Vector3 port(String key, int point, double x, List<Vector3> before) {
    String name = slips.pointName(point);
    double y =
        point == 1
            ? 0
            : replay.ask(
                key + ".y",
                () ->
                    out(
                        key,
                        subject + ", " + name,
                        before,
                        half -> breadths.at(point, x, true, half)));
    double z = up(key, subject + ", " + name, point, before);
    return Vector3.of(x, y, z);
  }

  /** The other side of the same station, with the x of the port side and the same keel. */
  List<Vector3> starboard(String key, List<Vector3> port) {
    TransverseQuestions otherSide =
        new TransverseQuestions(
            replay, quantities, length, subject, slips.starboard(), breadths, row);
    List<Vector3> points = new ArrayList<>(List.of(port.get(0).mirrored()));
    for (int point = 2; point <= port.size(); point++) {
      String at = subject + ", starboard " + slips.pointName(point);
      int number = point;
      double x = port.get(point - 1).x();
      Supplier<QuestionDefinition<Double>> out =
          () -> out(key + number, at, points, half -> breadths.at(number, x, false, half));
      double y =
          replay.ask(key + point + ".y", number == 2 ? () -> row.ofStarboard(out.get()) : out);
      double z = otherSide.up(key + point, at, point, points);
      points.add(Vector3.of(x, -y, z));
    }
    return List.copyOf(points);
  }

  /** A drawing of what is measured, with the way to find the line from which it is measured. */
  private static final List<String> HEIGHTS =
      Stream.of(Sketches.ACROSS, List.of(""), Sketches.LINE).flatMap(List::stream).toList();

  /** A drawing of what is measured, and below it the section so far. */
  private static List<String> sketch(List<String> drawn, List<Vector3> before) {
    if (before.size() < 2) {
      return drawn;
    }
    List<String> lines = new ArrayList<>(drawn);
    lines.add("");
    lines.add("So far, seen from aft:");
    List<Vector3> mirrored = before.stream().map(Vector3::mirrored).toList();
    boolean port = before.stream().anyMatch(p -> p.y() > 0);
    lines.addAll(SectionSketch.of(port ? before : mirrored, port ? mirrored : before));
    return lines;
  }

  private QuestionDefinition<Double> out(
      String key, String at, List<Vector3> before, Function<Double, Optional<Warning>> unlikely) {
    return quantities
        .length(key + ".y", at + ", half-breadth")
        .how("From the middle line straight out to the outside of the hull, level.")
        .show(sketch(Sketches.ACROSS, before))
        .why("Breadth is what keeps a boat upright. The keel is on the middle line: 0.")
        .within(quantities.length(0, length / 2, "half-breadths up to half the length"))
        .within(unlikely);
  }

  private double up(String key, String at, int point, List<Vector3> before) {
    return replay.ask(
        key + ".z",
        () ->
            quantities
                .length(key + ".z", at + ", height")
                .how(
                    "From the baseline (the lowest point of the bottom) straight up, with the boat",
                    "level: a spirit level across, a batten along, a rule standing on it. With no",
                    "thwart to lay them on: upside down, down from a string; show draws it.")
                .show(sketch(HEIGHTS, before))
                .why("The rail's height is the freeboard you have to lose.")
                .within(quantities.length(0, HIGHEST, "height of anything on such a hull"))
                .unless(z -> slips.railBelow(point, z, before)));
  }
}
