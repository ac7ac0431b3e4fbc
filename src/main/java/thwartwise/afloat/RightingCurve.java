package thwartwise.afloat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.Side;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;

/**
 * Righting arm against heel with sinkage and trim free, up to where the first edge reaches the
 * water.
 *
 * @param side toward which it heels
 * @param points at every whole degree from 0 up to flooding; at least one
 * @param flooding where the first edge reaches the water; empty when none does
 * @param floodingAt what floods; blank when nothing does
 * @param trimLost whether the curve ends early because no trim balances the boat any more
 * @param mass of the boat and the water in it, kg
 */
public record RightingCurve(
    Side side,
    List<Point> points,
    Optional<Point> flooding,
    String floodingAt,
    boolean trimLost,
    double mass) {

  public RightingCurve {
    points = List.copyOf(points);
  }

  /**
   * @param heel toward the side, rad
   * @param arm m, positive when it brings the boat back
   * @param energy potential energy over weight, m; only differences mean anything
   * @param plane the surface of the water there
   */
  public record Point(double heel, double arm, double energy, WaterPlane plane) {
    Point mirrored() {
      return new Point(heel, arm, energy, plane.mirrored());
    }
  }

  /** The curve toward the side that takes less energy to flood; starboard when both are alike. */
  public static Optional<RightingCurve> towardWorseSide(
      FloatingBody floating, List<FloodPoint> edges) {
    Optional<RightingCurve> starboard = toward(Side.STARBOARD, floating, edges);
    Optional<RightingCurve> port = toward(Side.PORT, floating, edges);
    if (starboard.isEmpty() || port.isEmpty()) {
      return Optional.empty();
    }
    boolean portWorse = port.get().energy() < starboard.get().energy() * (1 - 1e-6) - 1e-9;
    return portWorse ? port : starboard;
  }

  /** The curve toward one side; empty when the boat does not float or finds no trim upright. */
  public static Optional<RightingCurve> toward(
      Side side, FloatingBody floating, List<FloodPoint> edges) {
    return new HeelWalk(side, floating, edges).curve();
  }

  /** The curve toward the other side of the boat with port for starboard. */
  RightingCurve mirrored() {
    return new RightingCurve(
        side.other(),
        points.stream().map(Point::mirrored).toList(),
        flooding.map(Point::mirrored),
        floodingAt,
        trimLost,
        mass);
  }

  public OptionalDouble floodingHeel() {
    return flooding.map(p -> OptionalDouble.of(p.heel())).orElse(OptionalDouble.empty());
  }

  /**
   * The work to heel the boat from rest to where the curve ends, N·m: the difference of two
   * energies, so no quadrature is needed.
   */
  public double energy() {
    double least = points.stream().mapToDouble(Point::energy).min().orElseThrow();
    double end = last().energy();
    return Math.max(0, end - least) * mass * Gravity.STANDARD;
  }

  public double moment(Point point) {
    return point.arm() * mass * Gravity.STANDARD;
  }

  /** The greatest arm up to where the curve ends, flooding included. */
  public Point greatest() {
    Comparator<Point> byArm = Comparator.comparingDouble(Point::arm);
    Point greatest = points.stream().max(byArm).orElseThrow();
    return flooding.filter(p -> p.arm() > greatest.arm()).orElse(greatest);
  }

  /** Where the curve ends: at flooding, at a right angle, or where trim is lost. */
  public Point last() {
    return flooding.orElse(points.get(points.size() - 1));
  }

  /**
   * Why a curve ends: at a right angle if neither is the case.
   *
   * @param floodingAt what reaches the water; blank where nothing does
   * @param trimLost whether no trim balances the boat any further
   */
  public record End(String floodingAt, boolean trimLost) {}

  public End end() {
    return new End(flooding.isPresent() ? floodingAt : "", trimLost);
  }

  /** The heel at which a point first reaches the water; empty when the curve ends before. */
  public OptionalDouble reaches(Vector3 point) {
    Point before = points.get(0);
    if (before.plane().above(point) <= 0) {
      return OptionalDouble.of(before.heel());
    }
    for (int i = 1; i <= points.size(); i++) {
      Point here = i < points.size() ? points.get(i) : last();
      double dry = before.plane().above(point);
      double wet = here.plane().above(point);
      if (wet <= 0) {
        double share = dry / (dry - wet);
        return OptionalDouble.of(before.heel() + share * (here.heel() - before.heel()));
      }
      before = here;
    }
    return OptionalDouble.empty();
  }
}
