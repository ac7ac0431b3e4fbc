package thwartwise.crew;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.DoubleAccumulator;
import java.util.function.Supplier;
import java.util.stream.Stream;
import thwartwise.boat.Body;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.checks.Check;
import thwartwise.loadcase.Allowance;

/**
 * The greatest mass of everybody in one seating, with every smaller mass and every mixture with
 * lighter people allowed. Each mixture is searched upward separately, and none farther than the
 * others allow.
 */
public final class SeatingWalk {
  private final CrewAssessment assessment;
  private final Seating seating;
  private final double lightest;
  private final double heaviest;
  private final double landmark;

  /** The walks after the allowance: everybody heavy, which usually fails first, then mixtures. */
  private final List<MassWalk> alike = new ArrayList<>();

  private final List<MassWalk> mixed = new ArrayList<>();

  /** The walks as measured. */
  private final List<MassWalk> measured = new ArrayList<>();

  /** Only for speed. */
  private volatile Optional<MassWalk> lastRefused = Optional.empty();

  private final Map<Double, Boolean> looked = new ConcurrentHashMap<>();
  private final Map<Double, Boolean> lookedMixed = new ConcurrentHashMap<>();
  private final NavigableMap<Double, Double> answers = new ConcurrentSkipListMap<>();

  /** What is carried to a tenth of a kilogram, once it is known. */
  private volatile Double finest;

  SeatingWalk(
      CrewAssessment assessment,
      Seating seating,
      double lightest,
      double heaviest,
      double landmark) {
    this.assessment = assessment;
    this.seating = seating;
    this.lightest = lightest;
    this.heaviest = heaviest;
    this.landmark = landmark;
    for (Packing packing : packings()) {
      for (Allowance taken : assessment.allowances()) {
        assessment.parts().forEach(checks -> add(packing, taken, checks));
      }
    }
  }

  /** The mixtures that put people to different spots. */
  private List<Packing> packings() {
    List<List<Body>> seen = new ArrayList<>();
    List<Packing> packings = new ArrayList<>();
    List<Double> masses = Collections.nCopies(seating.people(), lightest);
    for (Packing packing : seating.packings(assessment.model().boat().places())) {
      List<Body> bodies = seating.bodies(assessment.model(), masses, packing);
      if (!seen.contains(bodies)) {
        seen.add(bodies);
        packings.add(packing);
      }
    }
    return packings;
  }

  private void add(Packing packing, Allowance taken, List<Check> checks) {
    List<List<Double>> mixtures = assessment.growing(seating);
    Supplier<Headroom> atLightest =
        Lazy.of(() -> headroom(mixtures.get(0), lightest, packing, taken, checks));
    for (List<Double> mixture : mixtures) {
      MassWalk walk =
          new MassWalk(
              mass -> headroom(mixture, mass, packing, taken, checks),
              atLightest,
              lightest,
              heaviest,
              landmark,
              mixture.stream().mapToDouble(s -> s).sum());
      if (taken.equals(Allowance.NONE)) {
        measured.add(walk);
      } else {
        (mixture == mixtures.get(0) ? alike : mixed).add(walk);
      }
    }
  }

  private Headroom headroom(
      List<Double> mixture, double mass, Packing packing, Allowance taken, List<Check> checks) {
    List<Double> masses = CrewMasses.masses(mixture, lightest, mass);
    return assessment.headroom(
        assessment.asked(assessment.loadedBoat(seating, masses, packing), taken, checks));
  }

  /** Whether everybody may weigh so much. */
  boolean carries(double mass) {
    OptionalDouble before = known(Math.ceil(mass));
    if (before.isPresent()
        && !(Math.floor(mass) <= before.getAsDouble() && before.getAsDouble() < mass)) {
      return before.getAsDouble() >= mass;
    }
    return mayCarryMixed(mass)
        && (carried(Math.ceil(mass)) >= mass || mass > Math.floor(mass) && carried() >= mass);
  }

  /** A quick look: false proves that the mass is too great, true proves nothing. */
  boolean mayCarry(double mass) {
    Boolean before = looked.get(mass);
    if (before == null) {
      before = allMeet(alike, mass);
      looked.put(mass, before);
    }
    return before;
  }

  /** The whole mass, kg, or as much as was asked for; zero when the lightest is too heavy. */
  double carried(double enough) {
    OptionalDouble before = known(enough);
    if (before.isPresent()) {
      return before.getAsDouble();
    }
    double found = asMeasured(withAllowance(enough));
    answers.put(enough, found);
    return found;
  }

  /** As far as what was asked about before tells: all masses below one that is carried are. */
  private OptionalDouble known(double enough) {
    Map.Entry<Double, Double> heavier = answers.ceilingEntry(enough);
    if (heavier != null) {
      return OptionalDouble.of(Math.min(enough, heavier.getValue()));
    }
    Map.Entry<Double, Double> lighter = answers.lowerEntry(enough);
    return lighter != null && lighter.getValue() < lighter.getKey()
        ? OptionalDouble.of(lighter.getValue())
        : OptionalDouble.empty();
  }

  /** A closer look than {@link #mayCarry}, but no more of a proof. */
  boolean mayCarryAll(double mass) {
    return mayCarryMixed(mass) && withAllowance(mass) >= Math.floor(mass);
  }

  /** The same of every mixture: one that fails at the very mass need not be walked up to there. */
  boolean mayCarryMixed(double mass) {
    if (!mayCarry(mass)) {
      return false;
    }
    Boolean before = lookedMixed.get(mass);
    if (before == null) {
      before = allMeet(mixed, mass);
      lookedMixed.put(mass, before);
    }
    return before;
  }

  // What refused last time is tried first, because it usually refuses again.
  private boolean allMeet(List<MassWalk> walks, double mass) {
    Optional<MassWalk> first = lastRefused.filter(walks::contains);
    if (first.isPresent() && !first.get().meets(mass)) {
      return false;
    }
    Optional<MassWalk> refused =
        walks.parallelStream()
            .filter(walk -> first.isEmpty() || walk != first.get())
            .filter(walk -> !walk.meets(mass))
            .findAny();
    if (refused.isPresent()) {
      lastRefused = refused;
    }
    return refused.isEmpty();
  }

  private double withAllowance(double enough) {
    return least(mixed, least(alike, enough));
  }

  private static double least(List<MassWalk> walks, double enough) {
    DoubleAccumulator least = new DoubleAccumulator(Math::min, enough);
    walks.parallelStream().forEach(walk -> least.accumulate(walk.carried(least.get())));
    return least.get();
  }

  // What meets all the way after the allowance is checked as measured at its ends alone, because
  // the measured boat with somebody a little heavier in it has been on that way already.
  private double asMeasured(double cautious) {
    return measured.parallelStream()
        .filter(walk -> !walk.meetsAtEnds(cautious))
        .mapToDouble(walk -> walk.carried(cautious))
        .reduce(cautious, Math::min);
  }

  /** The same down to a tenth of a kilogram. */
  double carried() {
    Double before = finest;
    if (before == null) {
      before = allToFine().orElseGet(this::toFine);
      finest = before;
    }
    return before;
  }

  // Mostly what is carried with the allowance taken off is carried as measured, too, which is then
  // asked once and not of the whole kilogram first.
  private OptionalDouble allToFine() {
    double whole = withAllowance(heaviest);
    double cautious = whole == 0 || whole == heaviest ? whole : beyond(whole);
    if (!measured.parallelStream().allMatch(walk -> walk.meetsAtEnds(cautious))) {
      return OptionalDouble.empty();
    }
    answers.put(heaviest, whole);
    return OptionalDouble.of(cautious);
  }

  private double toFine() {
    double whole = carried(heaviest);
    if (whole == 0 || whole == heaviest) {
      return whole;
    }
    double cautious = beyond(whole);
    return measured.parallelStream()
        .filter(walk -> !walk.meets(cautious))
        .mapToDouble(walk -> walk.lastMet(whole, cautious, CrewSearch.FINE))
        .reduce(cautious, Math::min);
  }

  /** Beyond a whole mass that is carried, with the allowance taken off. */
  private double beyond(double whole) {
    return Stream.concat(alike.stream(), mixed.stream())
        .parallel()
        .mapToDouble(walk -> walk.carriedBeyond(whole, CrewSearch.FINE))
        .reduce(whole + 1, Math::min);
  }
}
