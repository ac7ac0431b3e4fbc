package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Side;
import thwartwise.geometry.Immersion;
import thwartwise.hull.FloodPoint;

/**
 * The heeling of a boat to one side degree by degree with trim and sinkage free, each step starting
 * from the result of the last, until the first edge reaches the water.
 */
final class HeelWalk {
  private static final int LAST_DEGREE = 90;
  private static final double HEEL_TOLERANCE = 1e-7;

  private final Side side;
  private final FloatingBody floating;
  private final List<FloodPoint> edges;
  private final Immersion immersion = new Immersion();

  HeelWalk(Side side, FloatingBody floating, List<FloodPoint> edges) {
    this.side = side;
    this.floating = floating;
    this.edges = edges;
  }

  Optional<RightingCurve> curve() {
    List<RightingCurve.Point> points = new ArrayList<>();
    Optional<HeldHeel> before = start(0);
    if (before.isEmpty()) {
      return Optional.empty();
    }
    for (int degree = 0; degree <= LAST_DEGREE; degree++) {
      double heel = Math.toRadians(degree);
      Optional<HeldHeel> here = balanced(heel, before.get());
      if (here.isEmpty()) {
        return Optional.of(curve(points, Optional.empty(), "", true));
      }
      if (wet(here.get())) {
        return Optional.of(flooded(points, before.get(), heel, here.get()));
      }
      points.add(point(heel, here.get()));
      before = here;
    }
    return Optional.of(curve(points, Optional.empty(), "", false));
  }

  /** The balance in trim at a heel, found from level. */
  Optional<HeldHeel> start(double heel) {
    return TrimBalance.at(floating, side.sign() * heel, 0, Double.NaN, immersion);
  }

  /** The balance in trim at another heel, found from the one before. */
  Optional<HeldHeel> balanced(double heel, HeldHeel before) {
    return before.at(side.sign() * heel, immersion);
  }

  RightingCurve.Point point(double heel, HeldHeel here) {
    double arm = side.sign() * here.heelMoment() / floating.neededVolume();
    return new RightingCurve.Point(
        heel, arm, here.energy() / floating.neededVolume(), here.plane());
  }

  boolean wet(HeldHeel at) {
    return freeboard(at) < 0;
  }

  private double freeboard(HeldHeel at) {
    return Freeboard.least(edges, at.plane()).height();
  }

  /** The lowest edge. */
  String lowest(HeldHeel at) {
    return Freeboard.least(edges, at.plane()).at();
  }

  /** The heel, between a dry one and one that is not, at which the first edge reaches the water. */
  Flood between(double dryHeel, HeldHeel dryAt, double wetHeel, HeldHeel wetAt) {
    Bracket bracket = new Bracket(dryHeel, freeboard(dryAt), wetHeel, freeboard(wetAt));
    HeldHeel from = dryAt;
    HeldHeel at = wetAt;
    while (bracket.width() > HEEL_TOLERANCE) {
      double middle = bracket.next(HEEL_TOLERANCE);
      Optional<HeldHeel> there = balanced(middle, from);
      if (bracket.cut(middle, there.map(this::freeboard).orElse(Double.NaN))) {
        from = there.orElse(from);
      } else {
        at = there.orElse(at);
      }
    }
    return new Flood(bracket.high(), at);
  }

  /** The first water over an edge. */
  record Flood(double heel, HeldHeel at) {}

  private RightingCurve flooded(
      List<RightingCurve.Point> points, HeldHeel before, double heel, HeldHeel wet) {
    if (points.isEmpty()) {
      RightingCurve.Point at = point(heel, wet);
      return curve(List.of(at), Optional.of(at), lowest(wet), false);
    }
    double dry = points.get(points.size() - 1).heel();
    Flood flood = between(dry, before, heel, wet);
    return curve(points, Optional.of(point(flood.heel(), flood.at())), lowest(flood.at()), false);
  }

  private RightingCurve curve(
      List<RightingCurve.Point> points,
      Optional<RightingCurve.Point> flooding,
      String at,
      boolean trimLost) {
    return new RightingCurve(side, points, flooding, at, trimLost, floating.totalMass());
  }
}
