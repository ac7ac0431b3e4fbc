package thwartwise.inspection;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.afloat.RightingCurve;
import thwartwise.checks.Note;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadCase;

/**
 * One loading of the boat: afloat, heeled and swamped.
 *
 * @param loadCase who is aboard and where
 * @param afloat empty when no such pose exists; {@code note} says why
 * @param looseWater how it floats with more and more water loose in it
 */
public record StateFigures(
    LoadCase loadCase,
    Optional<AfloatFigures> afloat,
    Optional<RightingFigures> righting,
    SwampedFigures swamped,
    List<WaterFigures> looseWater,
    Note note) {

  public StateFigures {
    looseWater = List.copyOf(looseWater);
  }

  /**
   * The boat at rest, dry inside. Metres, kilograms, cubic metres.
   *
   * @param waterplaneArea of the hull at the water's surface, m²
   * @param gm slope of the righting arm at the pose, trim free, m
   * @param leastFreeboard lowest of rail and openings above the water, square to it, m
   */
  public record AfloatFigures(
      double displacement,
      Vector3 centreOfGravity,
      PoseFigures pose,
      double immersedVolume,
      Vector3 centreOfBuoyancy,
      double waterplaneArea,
      double gm,
      double leastFreeboard,
      String leastFreeboardAt,
      boolean stable) {}

  /**
   * The pose of the boat.
   *
   * @param waterAtOrigin height up the boat's z axis at x = y = 0 where the water cuts it, m; empty
   *     when the boat lies so far over that it means nothing
   * @param heel positive starboard down, rad
   * @param trim positive bow down, rad
   * @param stable whether it returns when nudged
   */
  public record PoseFigures(
      PoseOrientation orientation,
      OptionalDouble waterAtOrigin,
      double heel,
      double trim,
      boolean stable) {}

  /**
   * The righting curve toward the worse side, trim free.
   *
   * @param toward "starboard" or "port"
   * @param curve every whole degree from 0 to flooding
   * @param floodingHeel rad; empty when nothing floods up to a right angle
   * @param floodingAt what reaches the water first; blank when nothing does
   * @param greatestMoment N·m
   * @param work to heel it from where it rests to where the curve ends, N·m
   * @param end why the curve ends where it does; the first reports do not say
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
      Optional<RightingCurve.End> end,
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

  /**
   * The boat open to the sea, with its remaining lift.
   *
   * @param pose the worst pose reached; empty when it sinks or none was found
   * @param poses every pose reached
   * @param spareBuoyancy water density times all counted volume fully under, minus all mass aboard,
   *     kg
   */
  public record SwampedFigures(
      boolean floats, Optional<PoseFigures> pose, List<PoseFigures> poses, double spareBuoyancy) {

    public SwampedFigures {
      poses = List.copyOf(poses);
    }
  }

  /**
   * The boat with water loose over all its inside.
   *
   * @param volume of the water, m³
   * @param leastFreeboard m
   * @param gm slope of the righting arm, trim free, loose water included, m
   * @param heel at the worst pose, positive starboard down, rad
   * @param returns whether it still comes back to how it lay dry
   */
  public record WaterFigures(
      double volume, double leastFreeboard, double gm, double heel, boolean returns) {}
}
