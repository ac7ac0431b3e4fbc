package thwartwise.hull;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import thwartwise.geometry.Vector3;

/** One line of the hull from aft to forward: keel, chine, rail … faired through its stations. */
final class FairedLine {
  private final double[] x;
  private final FairedCurve y;
  private final FairedCurve z;

  private FairedLine(double[] x, FairedCurve y, FairedCurve z) {
    this.x = x;
    this.y = y;
    this.z = z;
  }

  static FairedLine through(List<Vector3> points) {
    return of(points, FairedCurve::through);
  }

  /** The same points joined by straight pieces. */
  static FairedLine straight(List<Vector3> points) {
    return of(points, FairedCurve::straight);
  }

  private static FairedLine of(
      List<Vector3> points, BiFunction<double[], double[], FairedCurve> curve) {
    double[] x = coordinates(points, Vector3::x);
    return new FairedLine(
        x,
        curve.apply(x, coordinates(points, Vector3::y)),
        curve.apply(x, coordinates(points, Vector3::z)));
  }

  private static double[] coordinates(List<Vector3> points, ToDoubleFunction<Vector3> axis) {
    return points.stream().mapToDouble(axis).toArray();
  }

  /** The point a fraction of the way, along x, from station i to the next, moved along x. */
  Vector3 at(int i, double fraction, double moved) {
    double along = x[i] + fraction * (x[i + 1] - x[i]) + moved;
    return Vector3.of(along, y.at(along), z.at(along));
  }

  /** Into how many straight pieces the stretch after station i falls so that none sags more. */
  int pieces(int i, double sag) {
    double h = x[i + 1] - x[i];
    double bend = Math.max(y.greatestBend(i), z.greatestBend(i));
    return (int) Math.ceil(h * Math.sqrt(bend / (8 * sag)));
  }
}
