package thwartwise.benchmark;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import thwartwise.boat.PolygonOracle;
import thwartwise.geometry.Solid;

/**
 * A hull as section polygons, and what lies of it under the water z = c + a x + b y.
 *
 * <p>Sections stand at the two Gauss points of every piece of a stretch between corners of the
 * hull: there a section's area is a parabola and its moments are cubics, which two points sum
 * exactly unless the water crosses a line of the hull within the piece. Each section is clipped by
 * the water with the polygon library; sections all wet or all dry are known by their corners.
 */
final class SectionedHull {
  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final double FAR = 50;
  private static final double ON_THE_WATER = 1e-9;

  /** Shorter stretches (a plumb stem between two nearly equal x) hold nothing worth a section. */
  private static final double SHORTEST = 1e-5;

  private final List<Section> sections = new ArrayList<>();

  private record Section(double x, double weight, Geometry shape) {}

  private SectionedHull() {}

  /**
   * @param pieces into how many equal ones each stretch is cut
   */
  static SectionedHull of(Solid solid, int pieces) {
    SectionedHull hull = new SectionedHull();
    List<Double> corners = PolygonOracle.corners(solid);
    for (int i = 0; i + 1 < corners.size(); i++) {
      hull.stretch(solid, corners.get(i), corners.get(i + 1), pieces);
    }
    return hull;
  }

  private void stretch(Solid solid, double from, double to, int pieces) {
    if (!(to - from > SHORTEST)) {
      return;
    }
    double half = (to - from) / pieces / 2;
    for (int piece = 0; piece < pieces; piece++) {
      double middle = from + (2 * piece + 1) * half;
      add(solid, middle - half / Math.sqrt(3), half);
      add(solid, middle + half / Math.sqrt(3), half);
    }
  }

  private void add(Solid solid, double x, double weight) {
    sections.add(new Section(x, weight, PolygonOracle.section(solid, x)));
  }

  int count() {
    return sections.size();
  }

  double lowest() {
    return sections.stream()
        .mapToDouble(s -> s.shape.getEnvelopeInternal().getMinY())
        .min()
        .orElseThrow();
  }

  double highest() {
    return sections.stream()
        .mapToDouble(s -> s.shape.getEnvelopeInternal().getMaxY())
        .max()
        .orElseThrow();
  }

  Wet under(double c, double a, double b) {
    Wet wet = new Wet();
    for (Section section : sections) {
      add(section, c + a * section.x, b, wet);
    }
    return wet;
  }

  private static void add(Section section, double c, double b, Wet wet) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Coordinate p : section.shape.getCoordinates()) {
      double above = p.y - c - b * p.x;
      least = Math.min(least, above);
      most = Math.max(most, above);
    }
    if (least >= 0) {
      return;
    }
    if (most <= 0) {
      wet.addVolume(section.x, section.weight, section.shape);
      return;
    }
    Geometry part = section.shape.intersection(water(c, b));
    wet.addVolume(section.x, section.weight, part);
    addSurface(section, c, b, part, wet);
  }

  /** The breadth at the surface lies between the corners that the clipping put there. */
  private static void addSurface(Section section, double c, double b, Geometry part, Wet wet) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Coordinate p : part.getCoordinates()) {
      if (Math.abs(p.y - c - b * p.x) < ON_THE_WATER) {
        from = Math.min(from, p.x);
        to = Math.max(to, p.x);
      }
    }
    if (from < to) {
      wet.addSurface(section.x, section.weight, from, to);
    }
  }

  private static Geometry water(double c, double b) {
    Coordinate left = new Coordinate(-FAR, c - b * FAR);
    Coordinate right = new Coordinate(FAR, c + b * FAR);
    return SHAPES.createPolygon(
        new Coordinate[] {
          left, right, new Coordinate(FAR, -2 * FAR), new Coordinate(-FAR, -2 * FAR), left
        });
  }

  /** Volume with its moments, and the waterplane seen from above with its own. */
  static final class Wet {
    double volume;
    double momentX;
    double momentY;
    double momentZ;
    double area;
    double areaX;
    double areaY;
    double areaXX;
    double areaXY;
    double areaYY;

    private void addVolume(double x, double weight, Geometry part) {
      double amount = weight * part.getArea();
      if (!(amount > 0)) {
        return;
      }
      Coordinate centre = part.getCentroid().getCoordinate();
      volume += amount;
      momentX += amount * x;
      momentY += amount * centre.x;
      momentZ += amount * centre.y;
    }

    private void addSurface(double x, double weight, double from, double to) {
      double breadth = weight * (to - from);
      double middle = (from + to) / 2;
      double square = (from * from + from * to + to * to) / 3;
      area += breadth;
      areaX += breadth * x;
      areaY += breadth * middle;
      areaXX += breadth * x * x;
      areaXY += breadth * x * middle;
      areaYY += breadth * square;
    }
  }
}
