package thwartwise.spread;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Loading;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.Lazy;
import thwartwise.crew.Limits;
import thwartwise.crew.LoadSearch;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.crew.Recommendation.Lighter;
import thwartwise.crew.Seating;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;
import thwartwise.spread.CrewCase.LadenCrew;
import thwartwise.spread.CrewCase.SeatedCrew;

/**
 * The crews of which it is judged how sure they are: those that come nearest to a limit, because
 * every one that may go aboard would take too long.
 */
final class WorstCrews {
  /** The number of loaded boats of one seating. */
  private static final int CASES = 2;

  /** The number of seatings of the recommended crew considered at once, the worst first. */
  private static final int SEATINGS = 3;

  /** The number of loaded boats of named people considered at once, those nearest to a limit. */
  private static final int NAMED_CASES = 4;

  private final CrewAssessment assessment;
  private final BoatModel model;
  private final RuleSet rules;
  private final Supplier<List<Vector3>> spots;

  WorstCrews(CrewAssessment assessment, RuleSet rules) {
    this.assessment = assessment;
    this.model = assessment.model();
    this.rules = rules;
    this.spots = Lazy.of(() -> LoadSearch.spots(model));
  }

  /**
   * The cases from nobody to one more than recommended: the recommended people in the worst
   * seatings they may have, and one more in the best there is. A lighter person is not followed by
   * two.
   */
  List<SeatedCrew> about(Limits limits, Limits.Crew crew, double each) {
    List<SeatedCrew> cases = new ArrayList<>();
    for (int n = 0; n < crew.people(); n++) {
      List<Seating> allowed =
          n == 0 ? Seating.of(0, model.boat().places()) : limits.crew(n).seatings();
      seating(allowed, each).ifPresent(s -> cases.addAll(worst(s, each, CASES)));
    }
    crew.seatings().stream()
        .sorted(Comparator.comparingDouble(s -> nearness(s, each)))
        .limit(SEATINGS)
        .forEach(s -> cases.addAll(worst(s, each, CASES)));
    if (!(each < rules.value("design-person"))) {
      Seating.of(crew.people() + 1, model.boat().places()).stream()
          .max(Comparator.comparingDouble(s -> nearness(s, each)))
          .ifPresent(s -> cases.addAll(worst(s, each, 1)));
    }
    return cases;
  }

  /** The case of so heavy people that comes nearest to a limit. */
  Optional<SeatedCrew> of(List<Seating> allowed, double each) {
    return seating(allowed, each).map(seating -> worst(seating, each, 1).get(0));
  }

  /** The loaded boats that come nearest to a limit, as cases. */
  Map<LoadedBoat, SeatedCrew> nearest(List<LoadedBoat> loaded) {
    Map<LoadedBoat, SeatedCrew> cases = new LinkedHashMap<>();
    loaded.stream()
        .sorted(Comparator.comparingDouble(assessment::nearness))
        .limit(NAMED_CASES)
        .forEach(boat -> cases.put(boat, asCase(assessment.seating(boat), boat)));
    return cases;
  }

  /**
   * The mixture that comes nearest to a limit, and everybody heavy: what is nearest need not be
   * what is least sure.
   */
  List<DoubleFunction<? extends CrewCase>> heaviest(CrewLimit limit) {
    List<Seating> allowed =
        Seating.of(limit.people(), model.boat().places()).stream()
            .filter(seating -> !limit.excludedSeatings().contains(seating.places(model)))
            .toList();
    return heaviest(allowed, limit.massLimit());
  }

  /** The same of one seating for lighter people. */
  List<DoubleFunction<? extends CrewCase>> heaviest(Lighter seating) {
    List<Seating> alike =
        Seating.of(seating.places().size(), model.boat().places()).stream()
            .filter(one -> one.places(model).equals(seating.places()))
            .toList();
    return heaviest(alike, seating.massLimit());
  }

  private List<DoubleFunction<? extends CrewCase>> heaviest(List<Seating> allowed, double each) {
    return seating(allowed, each).stream()
        .map(seating -> worst(seating, each, Integer.MAX_VALUE))
        .flatMap(
            all ->
                Stream.concat(
                    all.stream().limit(1),
                    all.stream().filter(crew -> isAllHeavy(crew, each)).limit(1)))
        .distinct()
        .<DoubleFunction<? extends CrewCase>>map(crew -> crew::upTo)
        .toList();
  }

  private static boolean isAllHeavy(SeatedCrew crew, double heaviest) {
    return crew.masses().stream().allMatch(mass -> mass == heaviest);
  }

  /** The crew with extra weight that comes nearest to a limit. */
  Optional<LadenCrew> laden(CrewLimit limit) {
    double each = Math.min(limit.massLimit(), rules.value("design-person"));
    return Seating.of(limit.people(), model.boat().places()).stream()
        .filter(
            seating ->
                limit.extraSeating().isEmpty()
                    || seating.places(model).equals(limit.extraSeating()))
        .flatMap(seating -> assessment.loadedBoats(seating, each).stream())
        .flatMap(crew -> spots.get().stream().map(at -> laden(crew, limit, at)))
        .min(Comparator.comparingDouble(laden -> assessment.nearness(laden.boat())))
        .map(
            laden ->
                new LadenCrew(asCase(assessment.seating(laden.crew), laden.crew), laden.extra));
  }

  /** A loaded boat and what is to be aboard besides. */
  private record LadenBoat(LoadedBoat crew, Loading.Weight extra) {
    LoadedBoat boat() {
      return crew.with(extra);
    }
  }

  private static LadenBoat laden(LoadedBoat crew, CrewLimit limit, Vector3 at) {
    return new LadenBoat(crew, new Loading.Weight(limit.extraMass(), at));
  }

  /** The seating that comes nearest to a limit. */
  private Optional<Seating> seating(List<Seating> allowed, double each) {
    return allowed.stream().min(Comparator.comparingDouble(s -> nearness(s, each)));
  }

  private double nearness(Seating seating, double each) {
    List<Double> masses = Collections.nCopies(seating.people(), each);
    return seating.packings(model.boat().places()).stream()
        .mapToDouble(p -> assessment.nearness(assessment.loadedBoat(seating, masses, p)))
        .min()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** The loaded boats of one seating that come nearest to a limit. */
  private List<SeatedCrew> worst(Seating seating, double each, int cases) {
    return assessment.loadedBoats(seating, each).stream()
        .sorted(Comparator.comparingDouble(assessment::nearness))
        .limit(cases)
        .map(loaded -> asCase(seating, loaded))
        .toList();
  }

  private SeatedCrew asCase(Seating seating, LoadedBoat loaded) {
    List<Double> masses = loaded.people().stream().map(b -> b.mass()).toList();
    Packing packing =
        seating.packings(model.boat().places()).stream()
            .filter(p -> seating.bodies(model, masses, p).equals(loaded.people()))
            .findFirst()
            .orElseThrow();
    return new SeatedCrew(seating, masses, packing);
  }
}
