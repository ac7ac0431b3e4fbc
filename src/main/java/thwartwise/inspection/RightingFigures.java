package thwartwise.inspection;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The righting curve toward the worse side, trim free.
 *
 * @param toward "starboard" or "port"
 * @param curve every whole degree from 0 to flooding
 * @param floodingHeel rad; empty when nothing floods up to a right angle
 * @param floodingAt what reaches the water first; blank when nothing does
 * @param greatestMoment N·m
 */
public record RightingFigures(
    String toward,
    List<Point> curve,
    OptionalDouble floodingHeel,
    String floodingAt,
    double greatestMoment,
    double greatestMomentHeel) {

  public RightingFigures {
    curve = List.copyOf(curve);
  }

  /** Heel toward the named side in rad, arm in m and moment in N·m, positive when they right. */
  public record Point(double heel, double arm, double moment) {}
}
