package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.measure.Rounding;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Warning;

/**
 * Unlikely half-breadths, compared with the stations aft of them. The plan of a hull is hollow over
 * a short length at most, so a breadth far beyond the line through the two before it was probably
 * misread.
 *
 * @param length overall, m
 * @param last whether it belongs to the last station, where a line may end in a point
 */
record BreadthWarnings(
    QuantityQuestions quantities,
    PlausibleLimits limits,
    double length,
    List<Station> before,
    boolean last) {
  private static final int TENTH = 10;

  /**
   * A half-breadth is doubted if this many times it is still less than the line through the
   * stations before and than the last of them; its decimal point is probably misplaced.
   */
  private static final double FAR_TOO_NARROW = 4;

  Optional<Warning> at(int point, double x, boolean port, double read) {
    double most = limits.breadthOverLength(length) * length / 2;
    if (read > most) {
      return Optional.of(doubt(read, most, "would make a boat too broad for its length", read / 2));
    }
    if (before.size() < 2) {
      return Optional.empty();
    }
    Vector3 nearer = reading(1, point, port);
    double led = Math.max(out(nearer), led(x, reading(2, point, port), nearer));
    if (limits.stations().isFarAbove(read, led)) {
      return Optional.of(doubt(read, led, "is far beyond what the stations aft lead to", read / 2));
    }
    return last || !(FAR_TOO_NARROW * read < Math.min(led, out(nearer))) || read == 0
        ? Optional.empty()
        : Optional.of(
            doubt(read, led, "is far short of what the stations aft lead to", read * TENTH));
  }

  /** The straight line through the two stations before, extended. */
  private static double led(double x, Vector3 farther, Vector3 nearer) {
    double step = nearer.x() - farther.x();
    return step > 0
        ? out(nearer) + (out(nearer) - out(farther)) * (x - nearer.x()) / step
        : out(nearer);
  }

  private Vector3 reading(int back, int point, boolean port) {
    Station station = before.get(before.size() - back);
    return (port ? station.port() : station.starboard()).get(point - 1);
  }

  private static double out(Vector3 point) {
    return Math.abs(point.y());
  }

  private Warning doubt(double read, double led, String why, double meant) {
    boolean half = meant < read;
    boolean fits = half ? meant <= led : meant <= 2 * led;
    String offer =
        " %s Did you mean %s?"
            .formatted(
                half ? "Was the full breadth taped?" : "Did the decimal point slip?",
                quantities.show(meant));
    return new Warning(
        "%s %s (%s).%s"
            .formatted(
                quantities.show(read),
                why,
                quantities.show(led),
                fits ? offer : " Measure it again."),
        fits ? Optional.of(Rounding.metres(meant)) : Optional.empty(),
        true);
  }
}
