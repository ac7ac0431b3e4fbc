package thwartwise.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.FloodPoint;
import thwartwise.hull.HullForm;
import thwartwise.hull.Station;
import thwartwise.hull.UnusableBoat;

/**
 * A measured boat with its solids, on a given day: hull, spaces and what counts of them, edges that
 * flood.
 */
public final class BoatModel {
  /** The greatest volume that two chambers may share, m³; less is the tape's error. */
  private static final double OVERLAP = 0.0005;

  /** The time for which people must be held up, "swamped-minutes" of the default rules, s. */
  private static final double HELD_UP = 3600;

  /** Twins are cut out of the two halves of one hull and have equal volumes to this share. */
  private static final double ALIKE = 1e-6;

  private final Boat boat;
  private final List<Boat> fewerAnswers;
  private final HullForm form;
  private final List<Space> spaces;
  private final LocalDate today;
  private final double heldUp;
  private final List<FloodPoint> edges;
  private final List<Kit> looseKit;
  private final BuoyancyKey dryKey;
  private final BuoyancyKey swampedKey;
  private final boolean symmetric;
  private final boolean alikeAfloat;
  private final boolean alikeSwamped;
  private final Map<Box, Overlap> known = new ConcurrentHashMap<>();
  private final Map<Box, Box> legRoom = new ConcurrentHashMap<>();
  private final Map<Kit, Vector3> slidToPort = new ConcurrentHashMap<>();
  private final Map<Kit, Vector3> slidToStarboard = new ConcurrentHashMap<>();

  private BoatModel(
      Boat boat,
      List<Boat> fewerAnswers,
      HullForm form,
      List<Space> spaces,
      LocalDate today,
      double heldUp) {
    this.heldUp = heldUp;
    this.boat = boat;
    this.fewerAnswers = fewerAnswers;
    this.form = form;
    this.today = today;
    this.spaces = List.copyOf(spaces);
    List<FloodPoint> points = new ArrayList<>(form.rail());
    boat.openings().stream()
        .filter(Opening::floodsTheBoat)
        .forEach(o -> o.ends().forEach(end -> points.add(new FloodPoint(o.name(), end))));
    this.edges = List.copyOf(points);
    this.looseKit = boat.kit().stream().filter(k -> !k.fastened() && k.in().isEmpty()).toList();
    this.dryKey = BuoyancyKey.dry(this);
    this.swampedKey = BuoyancyKey.swamped(this);
    this.alikeAfloat = alikeAfloat(boat);
    this.alikeSwamped = alikeSwamped(boat) && spaces.stream().allMatch(this::hasItsLike);
    this.symmetric = symmetric(boat) && alikeAfloat && alikeSwamped;
  }

  /**
   * Builds the solids.
   *
   * @throws UnusableBoat when something lies outside the hull or two chambers overlap
   */
  public static BoatModel of(Boat boat, LocalDate today) {
    Optional<HullCorrection> correction = HullCorrection.of(boat);
    Boat inForce = correction.map(HullCorrection::inForce).orElse(boat);
    List<Boat> fewer = new ArrayList<>(ChecklistEffects.withFewerAnswers(inForce));
    correction.stream()
        .flatMap(c -> c.bounds().stream())
        .map(ChecklistEffects::of)
        .filter(bound -> ChecklistEffects.isChanged(ChecklistEffects.of(inForce), bound))
        .forEach(fewer::add);
    HullForm form = HullForm.of(inForce.hull());
    BoatModel model = of(ChecklistEffects.of(inForce), fewer, form, today, HELD_UP);
    PlacementChecks.checkNotches(boat, form);
    return model;
  }

  /**
   * The same hull with other kit, chambers or load; its solids are not built again.
   *
   * @throws UnusableBoat as {@link #of}
   */
  public BoatModel fittedOut(Boat otherwise, LocalDate today) {
    List<Boat> fewer =
        fewerAnswers.stream()
            .map(before -> ChecklistEffects.withFewerAnswers(otherwise, boat, before))
            .filter(before -> ChecklistEffects.isChanged(otherwise, before))
            .distinct()
            .toList();
    return of(otherwise, fewer, form, today, heldUp);
  }

  /**
   * The same boat with these people aboard and nobody else.
   *
   * @throws UnusableBoat as {@link #of}
   */
  public BoatModel withAboard(List<Person> people) {
    return people.equals(boat.aboard()) ? this : fittedOut(boat.withAboard(people), today);
  }

  /**
   * The same boat under rules that want people held up for another time, s: what a leaking chamber
   * has lost by then does not count.
   */
  public BoatModel heldUpFor(double seconds) {
    return seconds == heldUp ? this : of(boat, fewerAnswers, form, today, seconds);
  }

  /**
   * The same boat with measurements a little otherwise; its hull is not built again where that is
   * as measured.
   *
   * @param otherwise as in its file
   * @throws UnusableBoat as {@link #of}
   */
  public BoatModel remeasured(Boat otherwise) {
    Boat other = ChecklistEffects.of(otherwise);
    return other.hull().equals(boat.hull())
        ? of(other, List.of(), form, today, heldUp)
        : of(otherwise, today).heldUpFor(heldUp);
  }

  /**
   * The boat with fewer of the faults that were found, the one without any first, and the boat
   * without any water in its chambers: it must hold people up then, too, because air that leaks out
   * on one side may level it. If a proof afloat gives a second weight of the hull, also the boat
   * with that weight. Empty where none of it changes what it can carry.
   *
   * @throws UnusableBoat as {@link #of}
   */
  public List<BoatModel> withFewerAnswers() {
    Stream<Boat> full = leaks() ? Stream.of(LeakTests.withoutWater(boat)) : Stream.empty();
    return Stream.concat(fewerAnswers.stream(), full).map(this::bound).toList();
  }

  private boolean leaks() {
    return spaces.stream().anyMatch(space -> space.counting().leaks());
  }

  /** The boat with the other weight of the hull that a proof afloat allows. */
  public List<BoatModel> withOtherHullWeight() {
    return fewerAnswers.stream()
        .filter(other -> !other.hull().equals(boat.hull()))
        .map(this::bound)
        .toList();
  }

  private BoatModel bound(Boat other) {
    HullForm ofOther = other.hull().equals(boat.hull()) ? form : HullForm.of(other.hull());
    return of(other, List.of(), ofOther, today, heldUp);
  }

  private static BoatModel of(
      Boat boat, List<Boat> fewerAnswers, HullForm form, LocalDate today, double heldUp) {
    PlacementChecks.check(boat, form);
    if (form.rail().isEmpty() && boat.openings().stream().noneMatch(Opening::floodsTheBoat)) {
      throw new UnusableBoat(
          "Hull: the rail is decked from end to end and no opening stays open, so nothing could"
              + " flood. This is for open boats: give \"decked\" only the lengths that have a deck,"
              + " or name the openings that nothing closes.");
    }
    List<Space> spaces = new ArrayList<>();
    for (Chamber chamber : boat.chambers()) {
      chamber.parts().forEach(part -> spaces.add(space(form, part, boat, today, heldUp)));
    }
    refuseOverlaps(spaces);
    return new BoatModel(boat, fewerAnswers, form, spaces, today, heldUp);
  }

  private static Space space(
      HullForm form, ChamberPart part, Boat boat, LocalDate today, double heldUp) {
    Solid solid = form.chamber(part.box());
    if (!(solid.volume() > 1e-6)) {
      throw new UnusableBoat(
          "Chamber \""
              + part.whole().name()
              + "\": its box holds none of the hull's inside."
              + " Check x, y and z against the stations; all are metres from the aft end, the"
              + " middle line and the lowest point of the bottom.");
    }
    CountedBuoyancy.Drawn drawn = CountedBuoyancy.Drawn.of(form, part.box(), solid);
    return new Space(
        part,
        solid,
        drawn.straight(),
        CountedBuoyancy.of(
            part, drawn, boat.kit(), boat.electrics(), boat.openings(), today, heldUp));
  }

  private static void refuseOverlaps(List<Space> spaces) {
    for (int i = 0; i < spaces.size(); i++) {
      for (int j = i + 1; j < spaces.size(); j++) {
        refuseOverlap(spaces.get(i), spaces.get(j));
      }
    }
  }

  private static void refuseOverlap(Space a, Space b) {
    if (!a.box().overlaps(b.box())) {
      return;
    }
    double shared = a.solid().within(b.box()).volume();
    if (shared > OVERLAP) {
      throw new UnusableBoat(
          String.format(
              Locale.ROOT,
              "Chambers \"%s\" and \"%s\" overlap by %.1f litres. The same air cannot count twice:"
                  + " change the x, y or z of one so that they only touch.",
              a.name(),
              b.name(),
              shared * 1000));
    }
  }

  public Boat boat() {
    return boat;
  }

  public HullForm form() {
    return form;
  }

  /** The weight of the bare hull, measured or estimated. */
  public HullWeight hullWeight() {
    Vector3 centre = form.centre();
    return new HullWeight(boat.hull().mass(), centre.x(), centre.z());
  }

  /** The day of the model; it decides whether a leak test counts. */
  public LocalDate today() {
    return today;
  }

  /**
   * The observed trial, if it counts: on its day, for a boat without other evidence that it holds
   * people up.
   */
  public Optional<ObservedTrial> observedTrial() {
    return boat.observedTrial()
        .filter(
            seen -> seen.counts(today, spaces.stream().anyMatch(s -> s.counting().share() > 0)));
  }

  public List<Space> spaces() {
    return spaces;
  }

  /**
   * The overlap of a box with spaces and shell, cached because the same box is asked for again and
   * again.
   */
  public Overlap shared(Box box) {
    return known.computeIfAbsent(box, b -> Overlap.of(this, b));
  }

  /** Rail and openings: every point where water comes aboard. */
  public List<FloodPoint> edges() {
    return edges;
  }

  public double waterDensity() {
    return boat.water().density();
  }

  /**
   * A key that is equal for models with the same lift, dry inside, and the same edges that flood.
   */
  public BuoyancyKey dryKey() {
    return dryKey;
  }

  /** A key that is equal for models with the same lift, open to the sea, apart from people. */
  public BuoyancyKey swampedKey() {
    return swampedKey;
  }

  /**
   * Whether port and starboard are alike in everything but the people. A place to one side makes
   * them unlike, with or without a twin, because a crew need not sit on both.
   */
  public boolean isSymmetric() {
    return symmetric;
  }

  /** Whether the lift of the dry boat, and the edges that flood, are alike on both sides. */
  public boolean isAlikeAfloat() {
    return alikeAfloat;
  }

  /** Whether the lift of the swamped boat is alike on both sides, apart from the people. */
  public boolean isAlikeSwamped() {
    return alikeSwamped;
  }

  private static boolean symmetric(Boat boat) {
    return boat.hull().centre().map(c -> c.y() == 0).orElse(true)
        && boat.kit().stream().allMatch(k -> k.at().y() == 0)
        && boat.openings().stream().allMatch(o -> o.middle().y() == 0)
        && boat.places().stream().allMatch(Place::isAboutTheMiddle);
  }

  private static boolean alikeAfloat(Boat boat) {
    return boat.hull().stations().stream().allMatch(Station::isSymmetric)
        && boat.openings().stream()
            .filter(Opening::floodsTheBoat)
            .allMatch(o -> o.middle().y() == 0);
  }

  private static boolean alikeSwamped(Boat boat) {
    return boat.hull().stations().stream().allMatch(Station::isSymmetric)
        && boat.kit().stream()
            .filter(k -> k.fastened() && k.volume().isPresent())
            .allMatch(k -> k.at().y() == 0)
        && boat.chambers().stream()
            .allMatch(c -> c.mirrored() || c.box().y().equals(c.box().y().mirrored()));
  }

  /** The body as boxes at its place aboard: the legs on the floor, then the rest. */
  public List<Box> boxes(Body body) {
    List<Box> boxes = body.boxes();
    Box legs = legRoom.computeIfAbsent(boxes.get(0), b -> new LegRoom(this).of(b));
    return List.of(legs, boxes.get(1));
  }

  /** Kit that is neither fastened nor shut away in a chamber. */
  public List<Kit> looseKit() {
    return looseKit;
  }

  /**
   * The position of loose kit after it slides.
   *
   * @param side 1 to port, −1 to starboard
   */
  public Vector3 slid(Kit kit, double side) {
    return (side > 0 ? slidToPort : slidToStarboard)
        .computeIfAbsent(kit, k -> new KitSlide(this, k).toward(side));
  }

  /**
   * Whether a space has an equal on the other side. One of two twins may be tight and the other
   * not.
   */
  private boolean hasItsLike(Space space) {
    return spaces.stream()
        .filter(other -> other.chamber().equals(space.chamber()))
        .allMatch(
            other ->
                CountedBuoyancy.holdsWaterBack(other.part())
                        == CountedBuoyancy.holdsWaterBack(space.part())
                    && Math.abs(other.counting().share() - space.counting().share()) < ALIKE);
  }

  /** The same boat as if every claimed chamber passed its test. */
  public BoatModel withClaimsProven() {
    List<Space> proven = spaces.stream().map(Space::withClaimProven).toList();
    return new BoatModel(boat, fewerAnswers, form, proven, today, heldUp);
  }

  /** The same boat with one chamber's lift multiplied by a factor. */
  public BoatModel withLiftOf(String chamber, double factor) {
    List<Space> other =
        spaces.stream().map(s -> s.name().equals(chamber) ? s.lifting(factor) : s).toList();
    return new BoatModel(boat, fewerAnswers, form, other, today, heldUp);
  }

  /** The people of the boat file, seated. */
  public List<Body> aboard() {
    return boat.aboard().stream().map(this::seated).toList();
  }

  private Body seated(Person person) {
    Place place =
        boat.places().stream()
            .filter(p -> p.name().equals(person.place()))
            .findFirst()
            .orElseThrow(
                () ->
                    new UnusableBoat(
                        "\""
                            + person.name()
                            + "\" sits at \""
                            + person.place()
                            + "\", which is no place of this boat. Name one of its places."));
    double x = person.x().orElseGet(() -> endFromAmidships(place));
    Vector3 spot = Vector3.of(x, person.y(), place.z());
    return Body.at(person.name(), person.mass(), place, spot, boat.hull().floor());
  }

  private double endFromAmidships(Place place) {
    double middle = form.outside().extent(Vector3.of(1, 0, 0)).middle();
    Span along = place.along();
    return middle - along.from() > along.to() - middle ? along.from() : along.to();
  }
}
