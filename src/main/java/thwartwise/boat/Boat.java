package thwartwise.boat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.hull.HullMeasurements;
import thwartwise.measure.UnitSystem;

/**
 * The whole boat file as it was measured.
 *
 * @param cleats where a line can be made fast
 * @param bailer what the bailer or bucket aboard holds, m³
 * @param waters where it will be used
 * @param measuredBy who held the tape
 * @param assumptions what was taken for granted because nobody measured it, in words
 * @param kept measurements that look wrong and were kept with a reason
 * @param whenSwamped what the crew does then; left out, its form tells
 * @param trailer what the trailer or roof rack that carries it on the road may carry, kg
 * @param units those it was measured in, and in which its papers speak
 * @param trialSeen what was seen of it full of water, as it is measured here
 * @param electrics battery, motor, panel and wires
 * @param pointAnswers what was found at the points of the checklists
 */
public record Boat(
    String name,
    Water water,
    HullMeasurements hull,
    List<Opening> openings,
    List<Chamber> chambers,
    List<Place> places,
    List<Kit> kit,
    List<Person> aboard,
    Propulsion propulsion,
    List<Cleat> cleats,
    Optional<Double> bailer,
    Waters waters,
    Optional<String> measuredBy,
    List<String> assumptions,
    List<ConfirmedMeasurement> kept,
    Optional<WhenSwamped> whenSwamped,
    Optional<Double> trailer,
    UnitSystem units,
    Optional<TrialSeen> trialSeen,
    ElectricalSystem electrics,
    List<PointAnswer> pointAnswers) {

  public Boat {
    openings = List.copyOf(openings);
    chambers = List.copyOf(chambers);
    places = List.copyOf(places);
    kit = List.copyOf(kit);
    aboard = List.copyOf(aboard);
    cleats = List.copyOf(cleats);
    assumptions = List.copyOf(assumptions);
    kept = List.copyOf(kept);
    pointAnswers = List.copyOf(pointAnswers);
  }

  /** A boat that nobody looked over. */
  public Boat(
      String name,
      Water water,
      HullMeasurements hull,
      List<Opening> openings,
      List<Chamber> chambers,
      List<Place> places,
      List<Kit> kit,
      List<Person> aboard,
      Propulsion propulsion,
      List<Cleat> cleats,
      Optional<Double> bailer,
      Waters waters,
      Optional<String> measuredBy,
      List<String> assumptions,
      List<ConfirmedMeasurement> kept,
      Optional<WhenSwamped> whenSwamped,
      Optional<Double> trailer,
      UnitSystem units,
      Optional<TrialSeen> trialSeen) {
    this(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        cleats,
        bailer,
        waters,
        measuredBy,
        assumptions,
        kept,
        whenSwamped,
        trailer,
        units,
        trialSeen,
        ElectricalSystem.NONE,
        List.of());
  }

  /** A boat of which nothing that looks wrong was kept. */
  public Boat(
      String name,
      Water water,
      HullMeasurements hull,
      List<Opening> openings,
      List<Chamber> chambers,
      List<Place> places,
      List<Kit> kit,
      List<Person> aboard,
      Propulsion propulsion,
      List<Cleat> cleats,
      Optional<Double> bailer,
      Waters waters,
      Optional<String> measuredBy,
      List<String> assumptions) {
    this(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        cleats,
        bailer,
        waters,
        measuredBy,
        assumptions,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        UnitSystem.METRIC,
        Optional.empty(),
        ElectricalSystem.NONE,
        List.of());
  }

  /** A boat of which neither cleats, nor a bailer, nor its waters were named. */
  public Boat(
      String name,
      Water water,
      HullMeasurements hull,
      List<Opening> openings,
      List<Chamber> chambers,
      List<Place> places,
      List<Kit> kit,
      List<Person> aboard,
      Propulsion propulsion,
      Optional<String> measuredBy,
      List<String> assumptions) {
    this(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        measuredBy,
        assumptions);
  }

  /** A hull of which nothing else is known yet. */
  public static Boat bare(HullMeasurements hull) {
    return bare("", Water.FRESH, hull, new Propulsion.NotStated());
  }

  /** A boat with nothing in it yet. */
  public static Boat bare(String name, Water water, HullMeasurements hull, Propulsion propulsion) {
    return new Boat(
        name,
        water,
        hull,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        propulsion,
        Optional.empty(),
        List.of());
  }

  /** The same boat somewhere else. */
  public Boat on(Waters others) {
    return with(hull, openings, chambers, places, kit, aboard, others, assumptions);
  }

  public Boat withOpenings(List<Opening> others) {
    return with(others, chambers, places, kit, aboard);
  }

  public Boat withChambers(List<Chamber> others) {
    return with(openings, others, places, kit, aboard);
  }

  public Boat withPlaces(List<Place> others) {
    return with(openings, chambers, others, kit, aboard);
  }

  public Boat withKit(List<Kit> others) {
    return with(openings, chambers, places, others, aboard);
  }

  /** The same, its bare hull weighed again. */
  public Boat withHullMass(double mass) {
    return with(hull.weighing(mass), openings, chambers, places, kit, aboard, waters, assumptions);
  }

  /** The same with more that was taken for granted. */
  public Boat assuming(List<String> more) {
    List<String> all = Stream.concat(assumptions.stream(), more.stream()).toList();
    return with(hull, openings, chambers, places, kit, aboard, waters, all);
  }

  public Boat withAboard(List<Person> others) {
    return with(openings, chambers, places, kit, others);
  }

  private Boat with(
      List<Opening> newOpenings,
      List<Chamber> newChambers,
      List<Place> newPlaces,
      List<Kit> newKit,
      List<Person> newAboard) {
    return with(hull, newOpenings, newChambers, newPlaces, newKit, newAboard, waters, assumptions);
  }

  private Boat with(
      HullMeasurements newHull,
      List<Opening> newOpenings,
      List<Chamber> newChambers,
      List<Place> newPlaces,
      List<Kit> newKit,
      List<Person> newAboard,
      Waters newWaters,
      List<String> newAssumptions) {
    return new Boat(
        name,
        water,
        newHull,
        newOpenings,
        newChambers,
        newPlaces,
        newKit,
        newAboard,
        propulsion,
        cleats,
        bailer,
        newWaters,
        measuredBy,
        newAssumptions,
        kept,
        whenSwamped,
        trailer,
        units,
        stillSeen(newHull, newOpenings, newChambers, newPlaces, newKit),
        electrics,
        pointAnswers);
  }

  // Another boat than the one that was seen was not seen; what went badly holds all the same.
  private Optional<TrialSeen> stillSeen(
      HullMeasurements newHull,
      List<Opening> newOpenings,
      List<Chamber> newChambers,
      List<Place> newPlaces,
      List<Kit> newKit) {
    boolean same =
        newHull.equals(hull)
            && newOpenings.equals(openings)
            && newChambers.equals(chambers)
            && newPlaces.equals(places)
            && newKit.equals(kit);
    return trialSeen.filter(seen -> same || seen.wentBadly());
  }

  /** The same, with these measurements kept although they look wrong. */
  public Boat keeping(List<ConfirmedMeasurement> doubted) {
    return with(doubted, whenSwamped, bailer, measuredBy, trailer, units);
  }

  /** The same, with what its crew does when it is swamped. */
  public Boat whenSwamped(WhenSwamped what) {
    return with(kept, Optional.of(what), bailer, measuredBy, trailer, units);
  }

  /** The same, with a trailer or roof rack that may carry so many kg. */
  public Boat withTrailer(double kilograms) {
    return with(kept, whenSwamped, bailer, measuredBy, Optional.of(kilograms), units);
  }

  /** The same, with who held the tape. */
  public Boat withMeasuredBy(Optional<String> by) {
    return with(kept, whenSwamped, bailer, by, trailer, units);
  }

  /** The same, with a bailer of so many m³ aboard. */
  public Boat withBailer(double volume) {
    return with(kept, whenSwamped, Optional.of(volume), measuredBy, trailer, units);
  }

  /** The same, told in these units. */
  public Boat in(UnitSystem others) {
    return with(kept, whenSwamped, bailer, measuredBy, trailer, others);
  }

  private Boat with(
      List<ConfirmedMeasurement> doubted,
      Optional<WhenSwamped> what,
      Optional<Double> newBailer,
      Optional<String> by,
      Optional<Double> newTrailer,
      UnitSystem newUnits) {
    return new Boat(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        cleats,
        newBailer,
        waters,
        by,
        assumptions,
        doubted,
        what,
        newTrailer,
        newUnits,
        trialSeen,
        electrics,
        pointAnswers);
  }

  /** The same, with what was seen of it full of water as it is now, or with nothing seen. */
  public Boat withTrialSeen(Optional<TrialSeen> seen) {
    return new Boat(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        cleats,
        bailer,
        waters,
        measuredBy,
        assumptions,
        kept,
        whenSwamped,
        trailer,
        units,
        seen,
        electrics,
        pointAnswers);
  }

  /** The same, with what was found when somebody looked it over. */
  public Boat withPointAnswers(List<PointAnswer> answers) {
    return new Boat(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        cleats,
        bailer,
        waters,
        measuredBy,
        assumptions,
        kept,
        whenSwamped,
        trailer,
        units,
        trialSeen,
        electrics,
        answers);
  }

  /** The same, with what is electric aboard. */
  public Boat withElectrics(ElectricalSystem system) {
    return new Boat(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        cleats,
        bailer,
        waters,
        measuredBy,
        assumptions,
        kept,
        whenSwamped,
        trailer,
        units,
        trialSeen,
        system,
        pointAnswers);
  }

  public double kitMass() {
    return kit.stream().mapToDouble(Kit::mass).sum();
  }
}
