package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Side;
import thwartwise.geometry.Box;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.FloodPoint;

/** The box of a reference row, over the middle of its length, with the water loose in it. */
final class BoxAfloat {
  private BoxAfloat() {}

  static Solid hull(Reference r) {
    return Blocks.block(r.in("L"), r.in("B"), r.in("D"));
  }

  static FloatingBody of(Reference r) {
    return new FloatingBody(
        r.in("m"),
        Vector3.of(r.in("xG", 0), r.in("yG", 0), r.in("zG")),
        List.of(new Lift(hull(r), 1)),
        r.in("rho", 1000),
        pools(r),
        List.of());
  }

  /** The same with the water frozen as it lies on an even keel. */
  static FloatingBody frozen(Reference r) {
    FloatingBody loose = of(r);
    double mass = loose.totalMass();
    double height = r.in("hz") + r.in("w") / (r.in("hl") * r.in("hb")) / 2;
    double water = r.in("rho", 1000) * r.in("w");
    double heightOfG = (r.in("m") * r.in("zG") + water * height) / mass;
    return new FloatingBody(mass, Vector3.of(0, 0, heightOfG), loose.lifts(), loose.density());
  }

  private static List<Pool> pools(Reference r) {
    List<Pool> pools = new ArrayList<>();
    if (r.inputs().containsKey("w")) {
      int strips = (int) r.in("n", 1);
      for (int i = 0; i < strips; i++) {
        pools.add(pool(r, i, strips));
      }
    }
    return pools;
  }

  private static Pool pool(Reference r, int i, int strips) {
    double breadth = r.in("hb") / strips;
    double from = r.in("hy", 0) - r.in("hb") / 2 + i * breadth;
    Box hold =
        new Box(
            new Span(-r.in("hl") / 2, r.in("hl") / 2),
            new Span(from, from + breadth),
            new Span(r.in("hz"), r.in("hz") + r.in("hh")));
    return new Pool(List.of(new Lift(Solid.block(hold), 1)), r.in("w") / strips);
  }

  static Side side(Reference r) {
    return r.in("side") > 0 ? Side.STARBOARD : Side.PORT;
  }

  /** The four corners of the rail. */
  static List<FloodPoint> rail(Reference r) {
    List<FloodPoint> corners = new ArrayList<>();
    for (double x : new double[] {-r.in("L") / 2, r.in("L") / 2}) {
      for (double y : new double[] {-r.in("B") / 2, r.in("B") / 2}) {
        corners.add(new FloodPoint("rail", Vector3.of(x, y, r.in("D"))));
      }
    }
    return corners;
  }

  /** Height up the boat's own vertical at which the water stands there. */
  static double draughtAt(Pose pose, double x, double y) {
    Vector3 up = pose.plane().up();
    return (pose.plane().height() - up.x() * x - up.y() * y) / up.z();
  }

  static void meets(Reference r, String name, double ours) {
    if (r.wants(name)) {
      assertThat(ours).as("%s of %s", name, r).isCloseTo(r.wanted(name), within(r.near(name)));
    }
  }
}
