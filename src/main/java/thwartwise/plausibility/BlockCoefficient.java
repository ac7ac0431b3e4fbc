package thwartwise.plausibility;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * The share of the block around it that an immersed hull fills: volume over waterline length times
 * waterline breadth times draft. The hull is taken level, at the volume it displaces, so that a
 * list or somebody sitting aft does not pass for a measuring error.
 */
final class BlockCoefficient {
  private static final double NUMERIC = 1e-9;
  private static final int HALVINGS = 60;
  private static final Vector3 AHEAD = Vector3.of(1, 0, 0);
  private static final Vector3 ATHWART = Vector3.of(0, 1, 0);
  private static final Vector3 UP = Vector3.of(0, 0, 1);

  private BlockCoefficient() {}

  /** Empty when the hull cannot displace as much, or displaces nothing. */
  static OptionalDouble of(Solid hull, double volume) {
    if (!(volume > 0 && volume < hull.volume())) {
      return OptionalDouble.empty();
    }
    WaterPlane plane = WaterPlane.of(0, 0, waterline(hull, volume));
    Solid immersed = hull.under(plane);
    List<Vector3> waterline =
        IntStream.range(0, immersed.triangleCount())
            .mapToObj(immersed::triangle)
            .flatMap(List::stream)
            .filter(corner -> Math.abs(plane.above(corner)) < NUMERIC)
            .toList();
    double draft = plane.height() - immersed.extent(UP).from();
    double block = length(waterline, AHEAD) * length(waterline, ATHWART) * draft;
    return block > 0 ? OptionalDouble.of(volume / block) : OptionalDouble.empty();
  }

  private static double waterline(Solid hull, double volume) {
    Span reach = hull.extent(UP);
    double low = reach.from();
    double high = reach.to();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (ImmersedPart.of(hull, WaterPlane.of(0, 0, middle)).volume() < volume) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private static double length(List<Vector3> points, Vector3 axis) {
    double least = points.stream().mapToDouble(axis::dot).min().orElse(0);
    double most = points.stream().mapToDouble(axis::dot).max().orElse(0);
    return most - least;
  }
}
