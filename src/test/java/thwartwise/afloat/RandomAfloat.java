package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
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
  static Arbitrary<RandomAfloat> any() {
    return Combinators.combine(
            RandomHull.any(),
            RandomHull.between(0.03, 0.8),
            centres(0.3, 1.5),
            bays(),
            RandomHull.between(-3.1, 3.1),
            RandomHull.between(-1.5, 1.5))
        .as(RandomAfloat::of);
  }

  /** Loaded as boats are, so that most of them rest more or less upright. */
  static Arbitrary<RandomAfloat> loadedAsBoatsAre() {
    return Combinators.combine(
            RandomHull.any(),
            RandomHull.between(0.05, 0.5),
            centres(0.1, 0.9),
            bays(),
            RandomHull.between(-0.2, 0.2),
            RandomHull.between(-0.2, 0.2))
        .as(RandomAfloat::of);
  }

  /** As shares: how far along, how far out, how far up. */
  private static Arbitrary<Vector3> centres(double out, double up) {
    return Combinators.combine(
            RandomHull.between(0.5 - out, 0.5 + out),
            RandomHull.between(-out, out),
            RandomHull.between(0, up))
        .as(Vector3::of);
  }

  private static Arbitrary<Box> bays() {
    return Combinators.combine(
            RandomHull.between(0, 0.7), RandomHull.between(0.1, 0.5), RandomHull.between(0.2, 1))
        .as((from, length, height) -> new Box(span(from, length), Span.ALL, span(0, height)));
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
