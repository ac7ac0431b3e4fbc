package thwartwise.sampleboats;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;

/** Puts a boat together, measurement by measurement: metres, kilograms, litres. */
final class BoatBuilder {
  /** The day every sample boat is inspected on. */
  static final LocalDate TODAY = LocalDate.of(2026, 11, 26);

  private static final double LITRE = 0.001;

  private final String name;
  private final double mass;
  private final Material material;
  private final double thickness;
  private final double floor;
  private final List<Station> stations = new ArrayList<>();
  private final List<Chamber> chambers = new ArrayList<>();
  private final List<Place> places = new ArrayList<>();
  private final List<Kit> kit = new ArrayList<>();
  private Propulsion propulsion = new Propulsion.Manual();

  BoatBuilder(String name, double mass, Material material, double thickness, double floor) {
    this.name = name;
    this.mass = mass;
    this.material = material;
    this.thickness = thickness;
    this.floor = floor;
  }

  /**
   * A station from keel to rail.
   *
   * @param keel x of its lowest point, m
   * @param rail x of its rail; points between lie on the straight line up the side
   * @param yz half breadth and height of each point
   */
  BoatBuilder station(String title, double keel, double rail, double... yz) {
    double low = yz[1];
    double rise = yz[yz.length - 1] - low;
    List<Vector3> points = new ArrayList<>();
    for (int i = 0; i < yz.length; i += 2) {
      double x = keel + (rail - keel) * (yz[i + 1] - low) / rise;
      points.add(Vector3.of(rounded(x), yz[i], yz[i + 1]));
    }
    stations.add(Station.mirrored(title, points));
    return this;
  }

  /** A flat bottom and one straight side. */
  BoatBuilder flat(
      String title, double keel, double rail, double half, double rise, double out, double up) {
    return station(title, keel, rail, 0, rise, half, rise, out, up);
  }

  /** A round bilge: keel, garboard, bilge, topside, rail. */
  BoatBuilder round(String title, double keel, double rail, double out, double low, double up) {
    double depth = up - low;
    return station(
        title,
        keel,
        rail,
        0,
        low,
        rounded(0.42 * out),
        rounded(low + 0.06 * depth),
        rounded(0.76 * out),
        rounded(low + 0.22 * depth),
        rounded(0.94 * out),
        rounded(low + 0.54 * depth),
        out,
        up);
  }

  /** To the millimetre, and no negative zero, which no file keeps. */
  private static double rounded(double metres) {
    return Math.rint(metres * 1000) / 1000 + 0.0;
  }

  static final double TO_THE_STERN = 0;

  /** As far as the hull reaches, whatever that is. */
  static final double TO_THE_STEM = Double.POSITIVE_INFINITY;

  static final double TO_THE_RAIL = Double.POSITIVE_INFINITY;

  /** An air space right across the boat, tested two months ago; tops at a height. */
  BoatBuilder tank(String title, double from, double to, double top) {
    return air(title, new Box(new Span(from, to), Span.ALL, below(top)), false);
  }

  /** From the bottom up. */
  private static Span below(double top) {
    return new Span(0, top);
  }

  /** A pair of air spaces along the sides, from this far out. */
  BoatBuilder sideTanks(String title, double from, double to, double inner, double top) {
    return air(title, side(from, to, inner, below(top)), true);
  }

  /** A pair of blocks of closed-cell foam along the sides. */
  BoatBuilder sideFoam(
      String title, double from, double to, double inner, double bottom, double top) {
    Filling foam = new Filling.Foam(true, true);
    chambers.add(
        new Chamber(
            title, side(from, to, inner, new Span(bottom, top)), foam, Optional.empty(), true));
    return this;
  }

  /** A block of closed-cell foam right across the boat. */
  BoatBuilder foam(String title, double from, double to, double bottom, double top) {
    Box box = new Box(new Span(from, to), Span.ALL, new Span(bottom, top));
    chambers.add(new Chamber(title, box, new Filling.Foam(true, true), Optional.empty(), false));
    return this;
  }

  private static Box side(double from, double to, double inner, Span up) {
    return new Box(new Span(from, to), new Span(inner, Double.POSITIVE_INFINITY), up);
  }

  private BoatBuilder air(String title, Box box, boolean mirrored) {
    SealTest test = new SealTest(TODAY.minusMonths(2), "water poured in", 20, 0, "builder");
    Filling filling = new Filling.Air(Seal.PROVEN, Optional.of(test));
    chambers.add(new Chamber(title, box, filling, Optional.empty(), mirrored));
    return this;
  }

  BoatBuilder place(String title, double x, double seat, double halfWidth, int people) {
    places.add(new Place(title, x, seat, halfWidth, people));
    return this;
  }

  BoatBuilder kit(String title, double kilograms, double x, double z, double litres) {
    Optional<Double> volume = litres > 0 ? Optional.of(litres * LITRE) : Optional.empty();
    kit.add(new Kit(title, kilograms, Vector3.of(x, 0, z), volume, true, Optional.empty()));
    return this;
  }

  /** A motor on the transom, watts. */
  BoatBuilder outboard(double watts) {
    propulsion = new Propulsion.Outboard(watts);
    return this;
  }

  Boat build() {
    HullMeasurements hull =
        new HullMeasurements(
            mass,
            Optional.empty(),
            Optional.of(material),
            material.swampedDensity(),
            thickness,
            floor,
            stations,
            List.of());
    return new Boat(
        name,
        Water.FRESH,
        hull,
        List.of(),
        chambers.stream().map(this::within).toList(),
        places,
        kit,
        List.of(),
        propulsion,
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        Optional.of("the builder"),
        List.of());
  }

  /** A file can leave out both ends of a span or neither, so an open end stops at the hull's. */
  private Chamber within(Chamber c) {
    Box box =
        new Box(
            within(c.box().x(), Vector3::x),
            within(c.box().y(), Vector3::y),
            within(c.box().z(), Vector3::z));
    return new Chamber(c.name(), box, c.filling(), c.measuredVolume(), c.mirrored());
  }

  private Span within(Span span, ToDoubleFunction<Vector3> axis) {
    double most =
        stations.stream().flatMap(s -> s.port().stream()).mapToDouble(axis).max().orElseThrow();
    return span.equals(Span.ALL) ? span : new Span(span.from(), Math.min(span.to(), most));
  }
}
