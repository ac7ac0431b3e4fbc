package thwartwise.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * The outline of a solid seen along one of the boat's axes: at many places along x the least and
 * the greatest height (from the side) or breadth (from above) of any of its triangles. Hollows
 * toward the viewer are bridged.
 */
final class Silhouette {
  private static final int PLACES = 160;

  private final double from;
  private final double step;
  private final double[] least = new double[PLACES + 1];
  private final double[] most = new double[PLACES + 1];

  private Silhouette(Span along) {
    from = along.from();
    step = along.length() / PLACES;
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    Arrays.fill(most, Double.NEGATIVE_INFINITY);
  }

  /** From starboard: x to the right, z up, metres. */
  static List<Point> fromTheSide(Solid solid) {
    return of(solid, Vector3::z);
  }

  /** From above: x to the right, y up, metres. */
  static List<Point> fromAbove(Solid solid) {
    return of(solid, Vector3::y);
  }

  private static List<Point> of(Solid solid, ToDoubleFunction<Vector3> up) {
    Silhouette seen = new Silhouette(solid.extent(Vector3.of(1, 0, 0)));
    for (int t = 0; t < solid.triangleCount(); t++) {
      List<Vector3> corners = solid.triangle(t);
      for (int i = 0; i < 3; i++) {
        seen.edge(corners.get(i), corners.get((i + 1) % 3), up);
      }
    }
    return seen.outline();
  }

  private void edge(Vector3 a, Vector3 b, ToDoubleFunction<Vector3> up) {
    Vector3 aft = a.x() <= b.x() ? a : b;
    Vector3 fore = a.x() <= b.x() ? b : a;
    // A little more than zero, so that rounding does not lose the very ends.
    double slack = 1e-9 * PLACES;
    int first = (int) Math.ceil((aft.x() - from) / step - slack);
    int last = (int) Math.floor((fore.x() - from) / step + slack);
    for (int i = Math.max(0, first); i <= Math.min(PLACES, last); i++) {
      double length = fore.x() - aft.x();
      double share = length > 0 ? (from + i * step - aft.x()) / length : 0;
      seen(i, up.applyAsDouble(aft.toward(fore, Math.max(0, Math.min(1, share)))));
      if (!(length > 0)) {
        seen(i, up.applyAsDouble(fore));
      }
    }
  }

  private void seen(int place, double up) {
    least[place] = Math.min(least[place], up);
    most[place] = Math.max(most[place], up);
  }

  private List<Point> outline() {
    List<Point> upper = new ArrayList<>();
    List<Point> lower = new ArrayList<>();
    for (int i = 0; i <= PLACES; i++) {
      if (least[i] <= most[i]) {
        upper.add(new Point(from + i * step, most[i]));
        lower.add(new Point(from + i * step, least[i]));
      }
    }
    Collections.reverse(lower);
    upper.addAll(lower);
    return upper;
  }
}
