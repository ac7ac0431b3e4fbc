package thwartwise.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/** A boat like a shoe box, whose every number can be worked on paper; for tests. */
public final class BoxBoat {
  public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  /** A box fills its block, and a shell that only weighs is of no known stuff. */
  private static final List<ConfirmedMeasurement> BOX =
      Stream.of("block", "hull-mass", "density", "proportions")
          .map(about -> new ConfirmedMeasurement(about, "a box, for tests"))
          .toList();

  private final double length;
  private final double beam;
  private final double depth;
  private double mass = 60;
  private Optional<Vector3> centre = Optional.empty();
  private double density = 750;
  private double thickness = 0.006;
  private double floor = 0.02;
  private Water water = Water.FRESH;
  private Propulsion propulsion = new Propulsion.Manual();
  private final List<Span> decked = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Chamber> chambers = new ArrayList<>();
  private final List<Place> places = new ArrayList<>();
  private final List<Kit> kit = new ArrayList<>();
  private final List<Person> aboard = new ArrayList<>();

  private BoxBoat(double length, double beam, double depth) {
    this.length = length;
    this.beam = beam;
    this.depth = depth;
  }

  public static BoxBoat of(double length, double beam, double depth) {
    return new BoxBoat(length, beam, depth);
  }

  /** Mass of the hull and the height of its centre, amidships on the middle line. */
  public BoxBoat hull(double hullMass, double heightOfG) {
    return hull(hullMass, Vector3.of(length / 2, 0, heightOfG));
  }

  public BoxBoat hull(double hullMass, Vector3 at) {
    mass = hullMass;
    centre = Optional.of(at);
    return this;
  }

  public BoxBoat shell(double swampedDensity, double shellThickness) {
    density = swampedDensity;
    thickness = shellThickness;
    return this;
  }

  /** A shell that weighs but displaces next to nothing: what is left is textbook shapes. */
  public BoxBoat weightlessShell() {
    return shell(1e12, 1e-7);
  }

  /** A shell whose solid is displaced in full: its share is one. */
  public BoxBoat solidShell(double shellThickness) {
    double inside =
        (length - 2 * shellThickness) * (beam - 2 * shellThickness) * (depth - shellThickness);
    return shell(mass / (length * beam * depth - inside), shellThickness);
  }

  public BoxBoat floor(double height) {
    floor = height;
    return this;
  }

  public BoxBoat salt() {
    water = Water.SALT;
    return this;
  }

  public BoxBoat driven(Propulsion by) {
    propulsion = by;
    return this;
  }

  public BoxBoat decked(double from, double to) {
    decked.add(new Span(from, to));
    return this;
  }

  public BoxBoat opening(Opening opening) {
    openings.add(opening);
    return this;
  }

  public BoxBoat chamber(Chamber chamber) {
    chambers.add(chamber);
    return this;
  }

  public BoxBoat proven(String name, Span x, Span y, Span z) {
    return chamber(proven(name, new Box(x, y, z), Optional.empty()));
  }

  public BoxBoat proven(String name, Span x) {
    return proven(name, x, Span.ALL, Span.ALL);
  }

  public BoxBoat claimed(String name, Span x) {
    return chamber(
        new Chamber(
            name,
            new Box(x, Span.ALL, Span.ALL),
            new Filling.Air(Seal.CLAIMED, Optional.empty()),
            Optional.empty(),
            false));
  }

  public static Chamber proven(String name, Box box, Optional<Double> measured) {
    SealTest test = new SealTest(TODAY.minusMonths(2), "water poured in", 20, 0, "builder");
    return new Chamber(name, box, new Filling.Air(Seal.PROVEN, Optional.of(test)), measured, false);
  }

  public BoxBoat place(String name, double x, double z, double halfWidth, int people) {
    return place(new Place(name, x, z, halfWidth, people));
  }

  public BoxBoat place(Place place) {
    places.add(place);
    return this;
  }

  public BoxBoat kit(Kit item) {
    kit.add(item);
    return this;
  }

  public BoxBoat kit(String name, double itemMass, Vector3 at, double volume) {
    return kit(new Kit(name, itemMass, at, Optional.of(volume), true, Optional.empty()));
  }

  public BoxBoat weight(String name, double itemMass, Vector3 at) {
    return kit(new Kit(name, itemMass, at, Optional.empty(), true, Optional.empty()));
  }

  public BoxBoat aboard(String name, double personMass, String place, double y) {
    return aboard(new Person(name, personMass, place, y));
  }

  public BoxBoat aboard(Person person) {
    aboard.add(person);
    return this;
  }

  public Boat boat() {
    List<Station> stations =
        List.of(
            station("aft", 0),
            station("aft quarter", length / 4),
            station("middle", length / 2),
            station("fore quarter", length * 3 / 4),
            station("fore", length));
    return new Boat(
            "shoe box",
            water,
            new HullMeasurements(
                mass, centre, Optional.empty(), density, thickness, floor, stations, decked),
            openings,
            chambers,
            places,
            kit,
            aboard,
            propulsion,
            List.of(),
            Optional.empty(),
            Waters.NOT_STATED,
            Optional.empty(),
            List.of())
        .withConfirmedMeasurements(BOX);
  }

  public BoatModel model() {
    return BoatModel.of(boat(), TODAY);
  }

  private Station station(String name, double x) {
    return Station.mirrored(
        name,
        List.of(Vector3.of(x, 0, 0), Vector3.of(x, beam / 2, 0), Vector3.of(x, beam / 2, depth)));
  }
}
