package thwartwise.boat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * Volume, centre and waterplane of a hull by another road: polygons cut out of it square to its
 * length, clipped by the water with a polygon library, and summed along the boat.
 */
public final class PolygonOracle {
  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final double FAR = 50;

  /** Three-point Gauss rule on each stretch. */
  private static final double[][] GAUSS = {
    {-Math.sqrt(0.6), 5.0 / 9}, {0, 8.0 / 9}, {Math.sqrt(0.6), 5.0 / 9}
  };

  private final Solid solid;
  private final WaterPlane plane;
  double volume;
  Vector3 moment = Vector3.ZERO;
  double waterplane;

  private PolygonOracle(Solid solid, WaterPlane plane) {
    this.solid = solid;
    this.plane = plane;
  }

  /** Sums from corner to corner of the hull, between which sections change smoothly. */
  static PolygonOracle of(Solid solid, WaterPlane plane, int pieces) {
    PolygonOracle oracle = new PolygonOracle(solid, plane);
    List<Double> corners = corners(solid);
    for (int i = 0; i + 1 < corners.size(); i++) {
      double width = (corners.get(i + 1) - corners.get(i)) / pieces;
      for (int piece = 0; piece < pieces; piece++) {
        oracle.stretch(corners.get(i) + width * (piece + 0.5), width);
      }
    }
    return oracle;
  }

  private void stretch(double middle, double width) {
    for (double[] node : GAUSS) {
      add(middle + width * node[0] / 2, width * node[1] / 2);
    }
  }

  /** Where along the hull its surface has corners, aft to forward. */
  public static List<Double> corners(Solid solid) {
    TreeSet<Double> all = new TreeSet<>();
    for (int i = 0; i < solid.triangleCount(); i++) {
      solid.triangle(i).forEach(p -> all.add(p.x()));
    }
    List<Double> apart = new ArrayList<>();
    for (double x : all) {
      if (apart.isEmpty() || x - apart.get(apart.size() - 1) > 1e-7) {
        apart.add(x);
      }
    }
    return apart;
  }

  /** Area of the section at x, above and under water. */
  static double sectionArea(Solid solid, double x) {
    return section(solid, x).getArea();
  }

  private void add(double x, double weight) {
    Geometry section = section(solid, x);
    Geometry wet = section.intersection(underWater(x));
    volume += weight * wet.getArea();
    if (!wet.isEmpty()) {
      Coordinate c = wet.getCentroid().getCoordinate();
      moment = moment.plus(Vector3.of(x, c.x, c.y).times(weight * wet.getArea()));
    }
    double slope = Math.hypot(plane.up().y(), plane.up().z());
    waterplane += weight * surface(x).intersection(section).getLength() / slope;
  }

  /** What the plane x = const cuts out of the surface, made into polygons. */
  public static Geometry section(Solid solid, double x) {
    List<LineString> pieces = new ArrayList<>();
    for (int i = 0; i < solid.triangleCount(); i++) {
      List<Coordinate> ends = new ArrayList<>();
      List<Vector3> t = solid.triangle(i);
      for (int k = 0; k < 3; k++) {
        crossing(t.get(k), t.get((k + 1) % 3), x, ends);
      }
      if (ends.size() == 2 && ends.get(0).distance(ends.get(1)) > 0) {
        pieces.add(SHAPES.createLineString(ends.toArray(new Coordinate[0])));
      }
    }
    Polygonizer polygons = new Polygonizer();
    polygons.add(SHAPES.createMultiLineString(pieces.toArray(new LineString[0])).union());
    @SuppressWarnings("unchecked")
    Collection<Polygon> found = polygons.getPolygons();
    return SHAPES.createGeometryCollection(found.toArray(new Geometry[0])).union();
  }

  // Always from the lesser end, so that neighbours find the very same point.
  private static void crossing(Vector3 a, Vector3 b, double x, List<Coordinate> ends) {
    if ((a.x() - x) * (b.x() - x) >= 0) {
      return;
    }
    Vector3 low = a.x() < b.x() ? a : b;
    Vector3 high = a.x() < b.x() ? b : a;
    Vector3 at = low.toward(high, (x - low.x()) / (high.x() - low.x()));
    ends.add(new Coordinate(at.y(), at.z()));
  }

  private Polygon underWater(double x) {
    Coordinate[] line = waterline(x);
    double y = -plane.up().y() * 2 * FAR;
    double z = -plane.up().z() * 2 * FAR;
    Coordinate low0 = new Coordinate(line[0].x + y, line[0].y + z);
    Coordinate low1 = new Coordinate(line[1].x + y, line[1].y + z);
    return SHAPES.createPolygon(new Coordinate[] {line[0], line[1], low1, low0, line[0]});
  }

  private LineString surface(double x) {
    return SHAPES.createLineString(waterline(x));
  }

  private Coordinate[] waterline(double x) {
    double y = plane.up().y();
    double z = plane.up().z();
    double square = y * y + z * z;
    double reach = (plane.height() - plane.up().x() * x) / square;
    double far = FAR / Math.sqrt(square);
    return new Coordinate[] {
      new Coordinate(y * reach - z * far, z * reach + y * far),
      new Coordinate(y * reach + z * far, z * reach - y * far)
    };
  }
}
