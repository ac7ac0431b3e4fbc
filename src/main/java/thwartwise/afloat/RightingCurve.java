package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.FloodPoint;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.WaterPlane;

/**
 * Righting arm against heel with sinkage and trim free, up to where the first edge reaches the
 * water.
 *
 * @param side toward which it heels
 * @param points at every whole degree from 0 up to flooding
 * @param floodingHeel toward that side, rad; empty when nothing floods up to a right angle
 * @param floodingAt what floods; blank when nothing does
 * @param mass of the boat, kg
 */
public record RightingCurve(
    Side side, List<Point> points, OptionalDouble floodingHeel, String floodingAt, double mass) {

  private static final int LAST_DEGREE = 90;
  private static final double HEEL_TOLERANCE = 1e-7;

  public RightingCurve {
    points = List.copyOf(points);
  }

  /** Which way the boat heels; the sign is that of heel to this side. */
  public enum Side {
    STARBOARD("starboard", 1),
    PORT("port", -1);

    private final String word;
    private final double sign;

    Side(String word, double sign) {
      this.word = word;
      this.sign = sign;
    }

    public String word() {
      return word;
    }

    public double sign() {
      return sign;
    }
  }

  /**
   * @param heel toward the side, rad
   * @param arm m, positive when it brings the boat back
   */
  public record Point(double heel, double arm) {}

  /** The curve toward the side that takes less energy to flood; starboard when both are alike. */
  public static Optional<RightingCurve> towardWorseSide(Floating floating, List<FloodPoint> edges) {
    Optional<RightingCurve> starboard = toward(Side.STARBOARD, floating, edges);
    Optional<RightingCurve> port = toward(Side.PORT, floating, edges);
    if (starboard.isEmpty() || port.isEmpty()) {
      return Optional.empty();
    }
    boolean portWorse = port.get().energy() < starboard.get().energy() * (1 - 1e-6) - 1e-9;
    return portWorse ? port : starboard;
  }

  /** The curve toward one side; empty when the boat cannot be balanced in trim. */
  public static Optional<RightingCurve> toward(
      Side side, Floating floating, List<FloodPoint> edges) {
    return new Walker(side, floating, edges).run();
  }

  /** Work to heel the boat to flooding, N·m (trapezium rule over the whole degrees). */
  public double energy() {
    double sum = 0;
    for (int i = 0; i + 1 < points.size(); i++) {
      double width = points.get(i + 1).heel() - points.get(i).heel();
      sum += width * (points.get(i).arm() + points.get(i + 1).arm()) / 2;
    }
    return sum * mass * Gravity.STANDARD;
  }

  public double moment(Point point) {
    return point.arm() * mass * Gravity.STANDARD;
  }

  public Point greatest() {
    Point greatest = points.get(0);
    for (Point p : points) {
      greatest = p.arm() > greatest.arm() ? p : greatest;
    }
    return greatest;
  }

  private static final class Walker {
    private final Side side;
    private final Floating floating;
    private final List<FloodPoint> edges;
    private final Immersion immersion = new Immersion();

    Walker(Side side, Floating floating, List<FloodPoint> edges) {
      this.side = side;
      this.floating = floating;
      this.edges = edges;
    }

    Optional<RightingCurve> run() {
      List<Point> points = new ArrayList<>();
      double trim = 0;
      double height = floating.extent(WaterPlane.upward(0, 0)).middle();
      for (int degree = 0; degree <= LAST_DEGREE; degree++) {
        double heel = Math.toRadians(degree);
        Optional<Settling> here = balanced(heel, trim, height);
        if (here.isEmpty()) {
          return Optional.empty();
        }
        if (freeboard(here.get()).height() < 0) {
          return Optional.of(flooded(points, degree, here.get()));
        }
        points.add(point(heel, here.get()));
        trim = here.get().plane.trim();
        height = here.get().plane.height();
      }
      return Optional.of(
          new RightingCurve(side, points, OptionalDouble.empty(), "", floating.mass()));
    }

    private Point point(double heel, Settling here) {
      return new Point(heel, side.sign() * here.heelMoment / floating.neededVolume());
    }

    private RightingCurve flooded(List<Point> points, int degree, Settling wet) {
      if (degree == 0) {
        return new RightingCurve(
            side,
            List.of(point(0, wet)),
            OptionalDouble.of(0),
            freeboard(wet).at(),
            floating.mass());
      }
      double dry = Math.toRadians(degree - 1);
      double under = Math.toRadians(degree);
      Settling at = wet;
      while (under - dry > HEEL_TOLERANCE) {
        double middle = (dry + under) / 2;
        Optional<Settling> there = balanced(middle, at.plane.trim(), at.plane.height());
        if (there.isPresent() && freeboard(there.get()).height() >= 0) {
          dry = middle;
        } else {
          under = middle;
          at = there.orElse(at);
        }
      }
      return new RightingCurve(
          side, points, OptionalDouble.of(under), freeboard(at).at(), floating.mass());
    }

    private Freeboard freeboard(Settling at) {
      return Freeboard.least(edges, at.plane);
    }

    private Optional<Settling> balanced(double heel, double trim, double height) {
      return TrimBalance.at(floating, side.sign() * heel, trim, height, immersion);
    }
  }
}
