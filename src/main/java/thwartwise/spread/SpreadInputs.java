package thwartwise.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.MeasuringWay;
import thwartwise.boat.MethodEvidence;
import thwartwise.boat.Opening;
import thwartwise.boat.Place;
import thwartwise.boat.Space;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;
import thwartwise.loadcase.Allowance;
import thwartwise.rules.RuleSet;
import thwartwise.spread.SpreadInput.Variation;
import thwartwise.uncertainty.Distribution;
import thwartwise.uncertainty.Distribution.Lognormal;
import thwartwise.uncertainty.Distribution.Normal;

/**
 * The measurements of a boat that may be off, each with its spread. Each mass has an error of its
 * own and one of the scales, which all of them share; half-breadths one of their station and one of
 * the tape; heights one of their station and one of the datum from which edges are measured.
 */
final class SpreadInputs {
  private final Boat boat;
  private final BoatModel model;
  private final RuleSet rules;
  private final RuleSet spreads;
  private final Set<InputKind> better;
  private final double mass;
  private final double volume;
  private final double height;
  private final List<SpreadInput> found = new ArrayList<>();

  private SpreadInputs(
      Boat boat, BoatModel model, RuleSet rules, RuleSet spreads, Set<InputKind> better) {
    Allowance unsaid = Allowance.unsaid(rules, model);
    this.boat = boat;
    this.model = model;
    this.rules = rules;
    this.spreads = spreads;
    this.better = better;
    this.mass = unsaid.massFactor() - 1;
    this.volume = 1 - unsaid.volumeFactor();
    this.height = unsaid.freeboardLoss();
  }

  /**
   * @param rules whose allowances stand where nobody said how a thing was measured
   * @param spreads how far a measurement may be off, by how it was taken
   * @param better kinds of measurement that were taken the better way
   * @param people how many a crew has at most
   */
  static List<SpreadInput> of(
      Boat boat,
      BoatModel model,
      RuleSet rules,
      RuleSet spreads,
      Set<InputKind> better,
      int people) {
    SpreadInputs inputs = new SpreadInputs(boat, model, rules, spreads, better);
    inputs.masses(people);
    inputs.centre();
    inputs.shape();
    inputs.shell();
    inputs.chambers();
    inputs.seats();
    return List.copyOf(inputs.found);
  }

  private void masses(int people) {
    double shared = spreads.value("one-scale");
    double own = mass * Math.sqrt(1 - shared * shared);
    weighed(
        InputKind.HULL_MASS,
        "",
        boat.hull().mass(),
        own,
        (b, kilograms) -> b.with(x -> x.withHullMass(kilograms)));
    for (int i = 0; i < boat.kit().size(); i++) {
      int item = i;
      Kit kit = boat.kit().get(i);
      weighed(
          InputKind.KIT_MASS,
          kit.name(),
          kit.mass(),
          own,
          (b, kilograms) -> b.with(x -> x.withKit(weighing(x.kit(), item, kilograms))));
    }
    for (int i = 0; i < people; i++) {
      int person = i;
      weighed(
          InputKind.PERSON_MASS,
          String.valueOf(i + 1),
          1,
          own,
          (b, factor) -> b.withPerson(person, factor));
    }
    add(
        InputKind.SCALES,
        "",
        Lognormal.of(1, shared * ofScales()),
        (b, factor) ->
            b.with(x -> x.withHullMass(factor * x.hull().mass()))
                .withKit(k -> weighing(k, factor * k.mass()))
                .withPeople(factor));
  }

  /**
   * The scales. Somebody who weighed the hull on good scales weighed the rest on them; nobody
   * guesses on scales.
   */
  private double ofScales() {
    return way(InputKind.HULL_MASS, "")
        .filter(way -> !way.isGuessed())
        .map(way -> Math.min(mass, rules.value(way.limit())))
        .orElse(mass);
  }

  private void weighed(
      InputKind kind, String thing, double value, double relative, Variation variation) {
    if (value > 0) {
      add(kind, thing, Lognormal.of(value, relative * value), variation);
    }
  }

  private static List<Kit> weighing(List<Kit> all, int item, double kilograms) {
    return replaced(all, item, weighing(all.get(item), kilograms));
  }

  private static Kit weighing(Kit kit, double kilograms) {
    return new Kit(kit.name(), kilograms, kit.at(), kit.volume(), kit.fastened(), kit.in());
  }

  /**
   * The height of the centre. A measured one counts with the accuracy of the better way, because it
   * takes a test.
   */
  private void centre() {
    Vector3 centre = model.form().centre();
    boolean measured = boat.hull().centre().isPresent();
    add(
        InputKind.HULL_CENTRE_ALONG,
        "",
        new Normal(
            centre.x(),
            measured
                ? Math.max(height, rules.value(MeasuringWay.ROLLER.limit()))
                : spreads.value("centre-estimated")),
        (b, x) -> b.withHull(h -> h.centredAt(Vector3.of(x, centre.y(), of(h, centre).z()))));
    add(
        InputKind.HULL_CENTRE_HEIGHT,
        "",
        new Normal(
            centre.z(),
            measured
                ? Math.max(height, rules.value(MeasuringWay.INCLINED.limit()))
                : spreads.value("centre-height-estimated")),
        (b, z) -> b.withHull(h -> h.centredAt(Vector3.of(of(h, centre).x(), centre.y(), z))));
  }

  private static Vector3 of(HullMeasurements hull, Vector3 otherwise) {
    return hull.centre().orElse(otherwise);
  }

  private void shape() {
    double read = spreads.value("station-read");
    for (int i = 0; i < boat.hull().stations().size(); i++) {
      int station = i;
      String name = boat.hull().stations().get(i).name();
      add(
          InputKind.HALF_BREADTHS,
          name,
          new Normal(0, read),
          (b, more) -> b.withHull(h -> moved(h, station, s -> broader(s, more))));
      add(
          InputKind.BOTTOM_HEIGHTS,
          name,
          new Normal(0, read),
          (b, up) -> b.withHull(h -> moved(h, station, s -> bottomRaised(s, up))));
    }
    add(
        InputKind.TAPE,
        "",
        new Normal(1, spreads.value("one-tape")),
        (b, factor) -> b.withHull(h -> everywhere(h, s -> scaledAcross(s, factor))));
    add(InputKind.EDGE_HEIGHTS, "", new Normal(0, height), SpreadInputs::edgesRaised);
  }

  private static VariedBoat edgesRaised(VariedBoat boat, double up) {
    return boat.withHull(h -> everywhere(h, s -> railRaised(s, up)))
        .with(b -> b.withOpenings(b.openings().stream().map(o -> raised(o, up)).toList()));
  }

  /** Moves an edge. What is closed under way is not an edge. */
  private static Opening raised(Opening opening, double up) {
    return opening.floodsTheBoat()
        ? new Opening(
            opening.name(),
            opening.middle().plus(Vector3.of(0, 0, up)),
            opening.width(),
            opening.athwart(),
            opening.closedBy(),
            opening.into(),
            opening.diameter())
        : opening;
  }

  /** Moves all points but the keel out on either side, in proportion to their half-breadth. */
  private static Station broader(Station station, double more) {
    double half = Math.max(greatest(station.port()), greatest(station.starboard()));
    return half > 0 ? scaledAcross(station, (half + more) / half) : station;
  }

  private static double greatest(List<Vector3> points) {
    return points.stream().mapToDouble(p -> Math.abs(p.y())).max().orElse(0);
  }

  private static Station scaledAcross(Station station, double factor) {
    return changed(
        station,
        points -> points.stream().map(p -> Vector3.of(p.x(), p.y() * factor, p.z())).toList());
  }

  /** Moves all points but the rail up. */
  private static Station bottomRaised(Station station, double up) {
    return changed(
        station,
        points ->
            IntStream.range(0, points.size())
                .mapToObj(i -> i + 1 < points.size() ? raised(points.get(i), up) : points.get(i))
                .toList());
  }

  private static Station railRaised(Station station, double up) {
    return changed(
        station,
        points -> {
          int last = points.size() - 1;
          return replaced(points, last, raised(points.get(last), up));
        });
  }

  private static Vector3 raised(Vector3 point, double up) {
    return point.plus(Vector3.of(0, 0, up));
  }

  /** A station that was measured on one side stays the same on both, to the last bit. */
  private static Station changed(Station station, UnaryOperator<List<Vector3>> change) {
    List<Vector3> port = change.apply(station.port());
    return station.isSymmetric()
        ? Station.mirrored(station.name(), port)
        : new Station(station.name(), port, change.apply(station.starboard()));
  }

  private static HullMeasurements moved(
      HullMeasurements hull, int station, UnaryOperator<Station> move) {
    List<Station> all = hull.stations();
    return hull.withStations(replaced(all, station, move.apply(all.get(station))));
  }

  private static HullMeasurements everywhere(HullMeasurements hull, UnaryOperator<Station> move) {
    return hull.withStations(hull.stations().stream().map(move).toList());
  }

  private void shell() {
    double thickness = boat.hull().thickness();
    add(
        InputKind.SHELL_THICKNESS,
        "",
        Lognormal.of(thickness, spreads.value("thickness-read") * thickness),
        (b, metres) -> b.withHull(h -> h.withThickness(metres)));
    double density = boat.hull().density();
    add(
        InputKind.SWAMPED_DENSITY,
        "",
        Lognormal.of(density, spreads.value("density-of-the-material") * density),
        (b, kilograms) -> b.withHull(h -> h.withDensity(kilograms)));
  }

  private void chambers() {
    for (Space space : model.spaces()) {
      if (space.counting().share() > 0) {
        add(
            InputKind.CHAMBER_VOLUME,
            space.name(),
            Lognormal.of(1, volume),
            (b, factor) -> b.lifting(space.name(), factor));
      }
    }
  }

  private void seats() {
    for (int i = 0; i < boat.places().size(); i++) {
      int place = i;
      Place there = boat.places().get(i);
      add(
          InputKind.SEAT_HEIGHT,
          there.name(),
          new Normal(there.z(), height),
          (b, z) -> b.with(x -> x.withPlaces(replaced(x.places(), place, there.at(z)))));
    }
  }

  private void add(InputKind kind, String thing, Distribution unsaid, Variation variation) {
    double least = Math.min(better(kind, unsaid), unsaid.standardDeviation());
    Distribution distribution =
        way(kind, thing).map(way -> narrowed(unsaid, said(kind, way, unsaid))).orElse(unsaid);
    found.add(new SpreadInput(kind, thing, distribution, least, variation));
  }

  /** The method, where somebody stated one. */
  private Optional<MeasuringWay> way(InputKind kind, String thing) {
    return kind.kind()
        .flatMap(k -> new MethodEvidence(boat).way(k, thing))
        .or(() -> kind.betterWay().filter(way -> better.contains(kind)));
  }

  /** The spread by method. No method is worse than an unstated one; a guess is. */
  private double said(InputKind kind, MeasuringWay way, Distribution unsaid) {
    double value = rules.value(way.limit());
    if (way.isGuessed()) {
      return value * unsaid.standardDeviation();
    }
    double off = way.isRelative() ? value * unsaid.mean() : value;
    double interpolated = kind == InputKind.EDGE_HEIGHTS ? betweenStations() : 0;
    return Math.min(Math.hypot(off, interpolated), unsaid.standardDeviation());
  }

  /**
   * The spread that few stations leave in the edges between them, however well these were measured.
   */
  private double betweenStations() {
    return Math.max(0, height - rules.value("allowance-freeboard"));
  }

  static Distribution narrowed(Distribution unsaid, double spread) {
    return unsaid instanceof Lognormal
        ? Lognormal.of(unsaid.mean(), spread)
        : new Normal(unsaid.mean(), spread);
  }

  private double better(InputKind kind, Distribution distribution) {
    return kind.betterWay()
        .map(way -> said(kind, way, distribution))
        .orElse(distribution.standardDeviation());
  }

  private static <T> List<T> replaced(List<T> all, int at, T other) {
    List<T> others = new ArrayList<>(all);
    others.set(at, other);
    return List.copyOf(others);
  }
}
