package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.UnaryOperator;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.RandomHull;

/**
 * A random hull in fresh water, loaded at random, at a random heel and trim; for properties.
 *
 * @param hull as it was measured
 * @param outside its solid
 * @param share of its volume that is under water
 * @param centre of gravity
 * @param bay a part of the hull that may be open to the sea
 */
record RandomAfloat(
    HullMeasurements hull,
    Solid outside,
    double share,
    Vector3 centre,
    Solid bay,
    double heel,
    double trim) {

  static final double DENSITY = 1000;

  /** Heeled and trimmed any way at all, overturned or on end too, and with G anywhere. */
  static RandomAfloat any(Random random) {
    return of(
        RandomHull.any(random),
        RandomHull.between(0.03, 0.8, random),
        centre(0.3, 1.5, random),
        bay(random),
        RandomHull.between(-3.1, 3.1, random),
        RandomHull.between(-1.5, 1.5, random));
  }

  /** Loaded as boats are, so that most of them rest more or less upright. */
  static RandomAfloat loadedAsBoatsAre(Random random) {
    return of(
        RandomHull.any(random),
        RandomHull.between(0.05, 0.5, random),
        centre(0.1, 0.9, random),
        bay(random),
        RandomHull.between(-0.2, 0.2, random),
        RandomHull.between(-0.2, 0.2, random));
  }

  /** As shares: how far along, how far out, how far up. */
  private static Vector3 centre(double out, double up, Random random) {
    return Vector3.of(
        RandomHull.between(0.5 - out, 0.5 + out, random),
        RandomHull.between(-out, out, random),
        RandomHull.between(0, up, random));
  }

  /** Another point to measure from. */
  static Vector3 origin(Random random) {
    return Vector3.of(
        RandomHull.between(-5, 5, random),
        RandomHull.between(-5, 5, random),
        RandomHull.between(-5, 5, random));
  }

  private static Box bay(Random random) {
    Span along = span(RandomHull.between(0, 0.7, random), RandomHull.between(0.1, 0.5, random));
    return new Box(along, Span.ALL, span(0, RandomHull.between(0.2, 1, random)));
  }

  private static Span span(double from, double length) {
    return new Span(from, from + length);
  }

  private static RandomAfloat of(
      RandomHull random, double share, Vector3 g, Box bay, double heel, double trim) {
    HullMeasurements hull = random.measured();
    Solid outside = RandomHull.outside(hull);
    double length = random.size().length();
    double depth = random.size().depth();
    Vector3 centre = Vector3.of(g.x() * length, g.y() * random.size().beam() / 2, g.z() * depth);
    Box box = new Box(times(bay.x(), length), Span.ALL, times(bay.z(), depth));
    return new RandomAfloat(hull, outside, share, centre, outside.within(box), heel, trim);
  }

  private static Span times(Span span, double factor) {
    return new Span(span.from() * factor, span.to() * factor);
  }

  double mass() {
    return share * outside.volume() * DENSITY;
  }

  Vector3 up() {
    return WaterPlane.upward(heel, trim);
  }

  FloatingBody floating() {
    return floating(mass(), new Lift(outside, 1));
  }

  FloatingBody floating(double mass, Lift... lifts) {
    return new FloatingBody(mass, centre, List.of(lifts), DENSITY);
  }

  List<FloodPoint> rail() {
    return RandomHull.rail(hull);
  }

  /** Built anew from the mirrored measurements. */
  RandomAfloat mirrored() {
    HullMeasurements other = RandomHull.mirrored(hull);
    return new RandomAfloat(
        other, RandomHull.outside(other), share, centre.mirrored(), bay, -heel, trim);
  }

  /** The same boat with another point for origin. */
  RandomAfloat moved(Vector3 by) {
    return new RandomAfloat(
        RandomHull.moved(hull, by),
        mapped(outside, p -> p.plus(by)),
        share,
        centre.plus(by),
        mapped(bay, p -> p.plus(by)),
        heel,
        trim);
  }

  private static Solid mapped(Solid solid, UnaryOperator<Vector3> map) {
    List<Vector3> vertices = new ArrayList<>();
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < solid.triangleCount(); i++) {
      solid.triangle(i).forEach(p -> vertices.add(map.apply(p)));
      triangles.add(new int[] {3 * i, 3 * i + 1, 3 * i + 2});
    }
    return Solid.of(vertices, triangles);
  }

  // Short, so that a report of a failure can be read; the seed builds it again.
  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d stations, share %.4f, G %s, heel %.4f, trim %.4f",
        hull.stations().size(),
        share,
        centre,
        heel,
        trim);
  }
}
