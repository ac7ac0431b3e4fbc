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
 * @param work to heel it from where it rests to where the curve ends, N·m
 * @param endsBecause why the curve ends where it does, in words
 * @param openings that something closes or that lead into a chamber: where each reaches the water
 */
public record RightingFigures(
    String toward,
    List<Point> curve,
    OptionalDouble floodingHeel,
    String floodingAt,
    double greatestMoment,
    double greatestMomentHeel,
    double work,
    String endsBecause,
    List<Reached> openings) {

  public RightingFigures {
    curve = List.copyOf(curve);
    openings = List.copyOf(openings);
  }

  /**
   * An opening left open.
   *
   * @param heel at which it reaches the water, rad; empty when the curve ends before
   * @param into the chamber that fills; blank when it is the boat
   */
  public record Reached(String name, OptionalDouble heel, String into) {}

  /** Heel toward the named side in rad, arm in m and moment in N·m, positive when they right. */
  public record Point(double heel, double arm, double moment) {}
}
