package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Side;
import thwartwise.geometry.SlowImmersion;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;

/**
 * Heels a boat to one side degree by degree with trim and sinkage free, each step starting from
 * where the last one came to rest, until the first edge reaches the water.
 */
final class SlowHeelWalk {
  private static final int LAST_DEGREE = 90;
  private static final double HEEL_TOLERANCE = 1e-7;

  private final Side side;
  private final FloatingBody floating;
  private final List<FloodPoint> edges;
  private final SlowImmersion immersion = new SlowImmersion();

  SlowHeelWalk(Side side, FloatingBody floating, List<FloodPoint> edges) {
    this.side = side;
    this.floating = floating;
    this.edges = edges;
  }

  Optional<RightingCurve> curve() {
    List<RightingCurve.Point> points = new ArrayList<>();
    Optional<SlowSettling> before = start(0);
    if (before.isEmpty()) {
      return Optional.empty();
    }
    for (int degree = 0; degree <= LAST_DEGREE; degree++) {
      double heel = Math.toRadians(degree);
      Optional<SlowSettling> here = balanced(heel, before.get());
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

  /** At rest in trim at a heel, found from level. */
  Optional<SlowSettling> start(double heel) {
    double height = floating.extent(WaterPlane.upward(heel, 0)).middle();
    return SlowTrimBalance.at(floating, side.sign() * heel, 0, height, immersion);
  }

  /** At rest in trim at another heel, found from how it lay before. */
  Optional<SlowSettling> balanced(double heel, SlowSettling before) {
    return SlowTrimBalance.at(
        floating, side.sign() * heel, before.plane.trim(), before.plane.height(), immersion);
  }

  RightingCurve.Point point(double heel, SlowSettling here) {
    double arm = side.sign() * here.heelMoment / floating.neededVolume();
    return new RightingCurve.Point(heel, arm, here.energy / floating.neededVolume(), here.plane);
  }

  boolean wet(SlowSettling at) {
    return Freeboard.least(edges, at.plane).height() < 0;
  }

  /** The lowest edge. */
  String lowest(SlowSettling at) {
    return Freeboard.least(edges, at.plane).at();
  }

  /** Between a heel that is dry and one that is not, where the first edge reaches the water. */
  Flood between(double dryHeel, SlowSettling dryAt, double wetHeel, SlowSettling wetAt) {
    double dry = dryHeel;
    double under = wetHeel;
    SlowSettling from = dryAt;
    SlowSettling at = wetAt;
    while (under - dry > HEEL_TOLERANCE) {
      double middle = (dry + under) / 2;
      Optional<SlowSettling> there = balanced(middle, from);
      if (there.isPresent() && !wet(there.get())) {
        dry = middle;
        from = there.get();
      } else {
        under = middle;
        at = there.orElse(at);
      }
    }
    return new Flood(under, at);
  }

  /** The first water over an edge. */
  record Flood(double heel, SlowSettling at) {}

  private RightingCurve flooded(
      List<RightingCurve.Point> points, SlowSettling before, double heel, SlowSettling wet) {
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
