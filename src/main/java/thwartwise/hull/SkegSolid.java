package thwartwise.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import thwartwise.geometry.Solid;
import thwartwise.geometry.SolidBuilder;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements.Skeg;

/**
 * Builds a skeg as a solid of its own: straight from its lower edge up to the keel line, as thick
 * all over.
 *
 * <p>Its top follows the very pieces of the faired keel line the hull is built of, so the two touch
 * along the middle line and share no volume. Under a V bottom the wedge between top and bottom
 * panel, thickness² · tan(rise) / 4 of a metre's length, is left out.
 */
final class SkegSolid {
  /** The error that a tape may put into an end above or beyond the keel line, m (judgement). */
  private static final double TAPE = 0.01;

  private final List<Vector3> keel;
  private final List<Vector3> edge;
  private final double half;
  private final SolidBuilder builder = new SolidBuilder();

  private SkegSolid(Skeg skeg, List<Vector3> keel) {
    this.keel = keel;
    this.edge = skeg.edge();
    this.half = skeg.thickness() / 2;
  }

  /**
   * The closed solid between the edge and the keel line.
   *
   * @param keel the faired keel line in straight pieces, aft to forward
   * @throws UnusableBoat when the edge leaves the keel line or stands above it
   */
  static Solid of(Skeg skeg, List<Vector3> keel) {
    return new SkegSolid(skeg, keel).build();
  }

  private Solid build() {
    checkReach();
    List<int[]> rings = new ArrayList<>();
    for (double x : places()) {
      rings.add(ring(x));
    }
    for (int i = 0; i + 1 < rings.size(); i++) {
      between(rings.get(i), rings.get(i + 1));
    }
    quad(rings.get(0), 0, 3, 2, 1);
    quad(rings.get(rings.size() - 1), 0, 1, 2, 3);
    return builder.build();
  }

  private void checkReach() {
    double from = edge.get(0).x();
    double to = last(edge).x();
    if (!(from >= keel.get(0).x() - TAPE && to <= last(keel).x() + TAPE)) {
      throw new UnusableBoat(
          String.format(
              Locale.ROOT,
              "Skeg: its edge runs from x %.2f to %.2f m, and the keel only from %.2f to %.2f m."
                  + " Measure x from the aft end of the hull, and end the skeg where the keel ends.",
              from,
              to,
              keel.get(0).x(),
              last(keel).x()));
    }
  }

  /** Every x where the edge or the keel line bends, so that both are followed exactly. */
  private TreeSet<Double> places() {
    double from = edge.get(0).x();
    double to = last(edge).x();
    TreeSet<Double> places = new TreeSet<>();
    edge.forEach(p -> places.add(p.x()));
    keel.stream().map(Vector3::x).filter(x -> from < x && x < to).forEach(places::add);
    return places;
  }

  /** Four corners across the skeg, counter-clockwise seen from ahead. */
  private int[] ring(double x) {
    double top = height(keel, x);
    double bottom = height(edge, x);
    if (!(bottom <= top + TAPE)) {
      throw new UnusableBoat(
          String.format(
              Locale.ROOT,
              "Skeg: at x %.2f m its lower edge (%.3f m) stands above the keel line (%.3f m)."
                  + " Measure both up from the lowest point of the hull's bottom;"
                  + " below it z is negative.",
              x,
              bottom,
              top));
    }
    double low = Math.min(bottom, top);
    return new int[] {
      builder.vertex(Vector3.of(x, -half, low)),
      builder.vertex(Vector3.of(x, half, low)),
      builder.vertex(Vector3.of(x, half, top)),
      builder.vertex(Vector3.of(x, -half, top))
    };
  }

  private void between(int[] aft, int[] fore) {
    for (int k = 0; k < 4; k++) {
      int next = (k + 1) % 4;
      builder.triangle(aft[k], aft[next], fore[next]);
      builder.triangle(aft[k], fore[next], fore[k]);
    }
  }

  private void quad(int[] ring, int a, int b, int c, int d) {
    builder.triangle(ring[a], ring[b], ring[c]);
    builder.triangle(ring[a], ring[c], ring[d]);
  }

  private static double height(List<Vector3> line, double x) {
    int i = 0;
    while (i < line.size() - 2 && x > line.get(i + 1).x()) {
      i++;
    }
    Vector3 from = line.get(i);
    Vector3 to = line.get(i + 1);
    return from.toward(to, (x - from.x()) / (to.x() - from.x())).z();
  }

  private static Vector3 last(List<Vector3> line) {
    return line.get(line.size() - 1);
  }
}
