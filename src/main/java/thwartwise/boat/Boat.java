package thwartwise.boat;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
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
 * @param measuredBy who measured it
 * @param assumptions what was assumed because nobody measured it
 * @param confirmedMeasurements measurements that look wrong and were confirmed with a reason
 * @param whenSwamped what the crew does then; left out, its form tells
 * @param trailer what the trailer or roof rack may carry, kg
 * @param vehicle what a car may pull or carry on its roof besides trailer or rack themselves, kg
 * @param units in which it was measured and its papers are written
 * @param observedTrial the trial in the flooded boat, as it is measured here
 * @param electrics battery, motor, panel and wires
 * @param pointAnswers answers to the points of the checklists
 * @param outfit rowlocks, anchor line, leaks
 * @param proofs proofs afloat, in the order saved
 * @param methods how its measurements were taken, where somebody said so
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
    List<Assumption> assumptions,
    List<ConfirmedMeasurement> confirmedMeasurements,
    Optional<CrewWhenSwamped> whenSwamped,
    Optional<Double> trailer,
    Optional<Double> vehicle,
    UnitSystem units,
    Optional<ObservedTrial> observedTrial,
    ElectricalSystem electrics,
    List<PointAnswer> pointAnswers,
    Outfit outfit,
    List<KeptProof> proofs,
    List<MeasuringMethod> methods) {

  public Boat {
    openings = List.copyOf(openings);
    chambers = List.copyOf(chambers);
    places = List.copyOf(places);
    kit = List.copyOf(kit);
    aboard = List.copyOf(aboard);
    cleats = List.copyOf(cleats);
    assumptions = List.copyOf(assumptions);
    confirmedMeasurements = List.copyOf(confirmedMeasurements);
    pointAnswers = List.copyOf(pointAnswers);
    proofs = List.copyOf(proofs);
    methods = List.copyOf(methods);
  }

  /** A boat measured in metres that nobody looked over or tried afloat. */
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
      List<Assumption> assumptions) {
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
        Optional.empty(),
        UnitSystem.METRIC,
        Optional.empty(),
        ElectricalSystem.NONE,
        List.of(),
        Outfit.NOT_STATED,
        List.of(),
        List.of());
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
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        Optional.empty(),
        List.of());
  }

  /** A copy in other waters. */
  public Boat withWaters(Waters others) {
    return with(parts -> parts.waters = others);
  }

  /**
   * A copy after the faults that somebody found when looking it over, which can only take from it.
   */
  public Boat asFound() {
    return ChecklistEffects.of(this);
  }

  public Boat withOpenings(List<Opening> others) {
    return with(parts -> parts.openings = others);
  }

  public Boat withChambers(List<Chamber> others) {
    return with(parts -> parts.chambers = others);
  }

  public Boat withPlaces(List<Place> others) {
    return with(parts -> parts.places = others);
  }

  public Boat withKit(List<Kit> others) {
    return with(parts -> parts.kit = others);
  }

  /** A copy whose bare hull was weighed again. */
  public Boat withHullMass(double mass) {
    return withHull(hull.weighing(mass));
  }

  /** A copy whose bare hull was measured again. */
  public Boat withHull(HullMeasurements other) {
    return with(parts -> parts.hull = other);
  }

  /** A copy with more assumptions. */
  public Boat withAssumptions(List<Assumption> more) {
    List<Assumption> all = Stream.concat(assumptions.stream(), more.stream()).toList();
    return with(parts -> parts.assumptions = all);
  }

  public Boat withAboard(List<Person> others) {
    return with(parts -> parts.aboard = others);
  }

  /** A copy with these confirmed measurements. */
  public Boat withConfirmedMeasurements(List<ConfirmedMeasurement> doubted) {
    return with(parts -> parts.confirmedMeasurements = doubted);
  }

  /** A copy with what its crew does when it is swamped. */
  public Boat whenSwamped(CrewWhenSwamped what) {
    return with(parts -> parts.whenSwamped = Optional.of(what));
  }

  /** What hull and kit may weigh together on the road, kg; empty where nobody stated it. */
  public Optional<Double> roadLimit() {
    return Stream.of(trailer, vehicle).flatMap(Optional::stream).min(Double::compare);
  }

  /** A copy with a car that may pull or carry so many kg besides trailer or rack. */
  public Boat withVehicle(double kilograms) {
    return with(parts -> parts.vehicle = Optional.of(kilograms));
  }

  /** A copy with a trailer or roof rack that may carry so many kg. */
  public Boat withTrailer(double kilograms) {
    return with(parts -> parts.trailer = Optional.of(kilograms));
  }

  /** A copy with the name of the person who measured it. */
  public Boat withMeasuredBy(Optional<String> by) {
    return with(parts -> parts.measuredBy = by);
  }

  /** A copy with a bailer of that volume, m³. */
  public Boat withBailer(double volume) {
    return with(parts -> parts.bailer = Optional.of(volume));
  }

  /** A copy in these units. */
  public Boat in(UnitSystem others) {
    return with(parts -> parts.units = others);
  }

  /** A copy with an observed trial in the flooded boat, or with none. */
  public Boat withObservedTrial(Optional<ObservedTrial> seen) {
    return with(parts -> parts.observedTrial = seen);
  }

  /** A copy with the answers to the checklists. */
  public Boat withPointAnswers(List<PointAnswer> answers) {
    return with(parts -> parts.pointAnswers = answers);
  }

  /** A copy with this electrical equipment. */
  public Boat withElectrics(ElectricalSystem system) {
    return with(parts -> parts.electrics = system);
  }

  /** A copy with its rowlocks, anchor line and leaks. */
  public Boat withOutfit(Outfit other) {
    return with(parts -> parts.outfit = other);
  }

  /** A copy with these proofs afloat. */
  public Boat withProofs(List<KeptProof> others) {
    return with(parts -> parts.proofs = others);
  }

  /** A copy with these methods of measuring. */
  public Boat withMethods(List<MeasuringMethod> said) {
    return with(parts -> parts.methods = said);
  }

  public Boat withCleats(List<Cleat> others) {
    return with(parts -> parts.cleats = others);
  }

  private Boat with(Consumer<BoatParts> change) {
    BoatParts parts = new BoatParts(this);
    change.accept(parts);
    boolean same = parts.isMeasuredAs(this);
    // A trial of a boat with other measurements does not count; a failed one holds all the same.
    parts.observedTrial = parts.observedTrial.filter(seen -> same || seen.failed());
    return parts.of(this);
  }

  /** The place with that name. */
  public Optional<Place> place(String called) {
    return places.stream().filter(place -> place.name().equals(called)).findFirst();
  }

  public double kitMass() {
    return kit.stream().mapToDouble(Kit::mass).sum();
  }
}
