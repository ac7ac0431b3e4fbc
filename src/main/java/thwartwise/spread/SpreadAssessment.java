package thwartwise.spread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.HullCorrection;
import thwartwise.checks.Role;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.Limits;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.crew.Recommendation.Lighter;
import thwartwise.crew.Seating;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;
import thwartwise.spread.CrewCase.NamedPeople;
import thwartwise.spread.CrewCase.SeatedCrew;
import thwartwise.uncertainty.Distribution;
import thwartwise.uncertainty.FirstOrderPropagation;
import thwartwise.uncertainty.MonteCarloPropagation;
import thwartwise.uncertainty.PropagatedResult;
import thwartwise.uncertainty.SampledResult;

/**
 * The computation of how sure an answer is. Every measurement is moved by its spread up and down;
 * the margins of each crew follow these moves to second order, and many boats are drawn at random
 * from that. Where a figure of a crew that should be allowed is within two spreads of its limit,
 * some hundred boats are drawn and computed in full as well, and the lesser share counts.
 */
public final class SpreadAssessment {
  private static final long SEED = 21;

  /** The number of boats in full, with which a share of 95 in 100 scatters by 1.5. */
  private static final int IN_FULL = 200;

  /** Of seatings for lighter people, for each number of them: more is not read. */
  private static final int SEATINGS = 4;

  private final Boat boat;
  private final BoatModel model;
  private final Optional<HullCorrection> proved;
  private final WorstCrews worst;
  private final Limits limits;
  private final RuleSet rules;
  private final RuleSet spreads;
  private final Set<InputKind> better;
  private final CaseFigures known;

  /**
   * @param measured the boat of its file
   * @param limits of the crew search whose answer is to be judged
   * @param rules in force
   * @param spreads how far a measurement may be off, by how it was taken
   * @param better kinds of measurement that were taken the better way
   * @param known from the same boat before, whatever was taken off its seatings
   */
  public SpreadAssessment(
      Boat measured,
      CrewAssessment assessment,
      Limits limits,
      RuleSet rules,
      RuleSet spreads,
      Set<InputKind> better,
      CaseFigures known) {
    this.known = known;
    this.model = assessment.model();
    this.proved = HullCorrection.of(measured);
    this.boat = proved.map(HullCorrection::inForce).orElse(measured).withProofs(List.of());
    this.limits = limits;
    this.rules = rules;
    this.worst = new WorstCrews(assessment, rules);
    this.spreads = spreads;
    this.better = better;
  }

  /** An answer with the seatings for which it is not sure enough. */
  public static final class Judged {
    private final BoatSpread answer;
    private final List<Seating> unsure;
    private final List<SpreadInput> mattering;

    private Judged(BoatSpread answer, List<Seating> unsure, List<SpreadInput> mattering) {
      this.answer = answer;
      this.unsure = List.copyOf(unsure);
      this.mattering = List.copyOf(mattering);
    }

    public BoatSpread answer() {
      return answer;
    }

    /** Seatings that are allowed and should not be. */
    public List<Seating> unsure() {
      return unsure;
    }
  }

  /**
   * The answer for the checks that limit the crew, for a number of adults or, where there are none,
   * for one lighter person.
   */
  public Judged of(int adults, IntFunction<Runnable> progress) {
    Limits.Crew crew = limits.crew(adults);
    double adult = rules.value("design-person");
    double each = crew.people() > 0 ? crew.each() : adult;
    List<CrewCase> cases = new ArrayList<>(worst.about(limits, crew, each));
    cases.add(new NamedPeople(boat.aboard(), Set.of(Role.LIMITS_CREW)));
    SpreadDraws draws = draws(crew.people(), each, cases, inputs(cases), progress);
    Map<CrewCase, Double> inFull = inFull(draws, progress);
    BoatSpread answer = draws.answer(adult, Allowance.unsaid(rules, model), inFull);
    return new Judged(
        answer, answer.isSure() ? List.of() : draws.unsure(inFull), draws.mattering());
  }

  /**
   * The same with the acts of the recommended crew, and with all findings of the boat as loaded.
   * Only measurements that move what limits the crew are moved for them.
   *
   * @param judged the answer of a search with the same people
   */
  public BoatSpread withEveryFinding(
      BoatSpread judged, Judged found, IntFunction<Runnable> progress) {
    boolean nobody = boat.aboard().isEmpty();
    List<CrewCase> cases = new ArrayList<>();
    cases.add(new NamedPeople(boat.aboard(), asked(!nobody)));
    Limits.Crew crew = limits.crew(judged.isAdults() ? judged.recommended() : 0);
    if (crew.people() > 0) {
      worst.of(crew.seatings(), crew.each()).ifPresent(one -> cases.add(one.asking(asked(nobody))));
    }
    return draws(judged.recommended(), judged.each(), cases, found.mattering, progress)
        .findings(judged);
  }

  /** The loaded boats in which too few boats measured like this meet what limits the crew. */
  public List<LoadedBoat> unsure(List<LoadedBoat> loaded, IntFunction<Runnable> progress) {
    Map<LoadedBoat, SeatedCrew> nearest = worst.nearest(loaded);
    if (nearest.isEmpty()) {
      return List.of();
    }
    SpreadDraws draws = draws(List.copyOf(nearest.values()), progress);
    Map<CrewCase, Double> inFull = inFull(draws, progress);
    return nearest.keySet().stream()
        .filter(boat -> draws.share(nearest.get(boat), inFull) < BoatSpread.ENOUGH)
        .toList();
  }

  /**
   * The limits of each number of people with which enough boats measured like this meet every
   * limit: the mass of each in the worst seating that the screen allows, and the extra weight at
   * its worst spot in the seating it is reported for. Of the seatings for lighter people those for
   * the heaviest are judged, each by itself, and the others left out.
   *
   * @param screened the limits of the search
   * @param adults that are sure enough
   */
  public JudgedLimits sureLimits(
      Supplier<List<CrewLimit>> screened, int adults, IntFunction<Runnable> progress) {
    SureLimits sure = new SureLimits();
    Supplier<List<CrewLimit>> judged =
        () -> sure.of(screened.get(), crews -> shares(crews, progress));
    return new JudgedLimits(
        () -> {
          screened.get().forEach(limit -> addRow(sure, limit, adults));
          return judged.get();
        },
        rows -> {
          screened.get().stream()
              .limit(rows.size())
              .forEach(limit -> addSeatings(sure, limit, adults, s -> !carriesExtra(limit, s)));
          return judged.get();
        });
  }

  /** What decides the load with so many people. */
  private void addRow(SureLimits sure, CrewLimit limit, int adults) {
    Limits.Crew judged = limits.crew(adults);
    List<DoubleFunction<? extends CrewCase>> crews = worst.heaviest(limit);
    if (limit.people() <= judged.people()) {
      sure.addMass(limit, judged.each(), crews);
    } else {
      sure.addUncertainMass(limit, limits.least(limit.people(), adults), crews);
    }
    addSeatings(sure, limit, adults, seating -> carriesExtra(limit, seating));
    if (limit.extraMass() >= 1) {
      worst.laden(limit).ifPresent(crew -> sure.addExtra(limit, crew::carrying));
    }
  }

  private void addSeatings(
      SureLimits sure, CrewLimit limit, int adults, Predicate<Lighter> wanted) {
    double least = limits.least(limit.people(), adults);
    limit.lighter().stream()
        .sorted(
            Comparator.comparing((Lighter seating) -> !carriesExtra(limit, seating))
                .thenComparing(Comparator.comparingDouble(Lighter::massLimit).reversed()))
        .limit(SEATINGS)
        .filter(wanted)
        .forEach(seating -> sure.addSeating(limit, seating, least, worst.heaviest(seating)));
  }

  private static boolean carriesExtra(CrewLimit limit, Lighter seating) {
    return seating.places().equals(limit.extraSeating());
  }

  /** To second order. */
  private Map<CrewCase, Double> shares(List<CrewCase> cases, IntFunction<Runnable> progress) {
    return draws(cases, progress).shares();
  }

  /** The further questions to the boat; what only informs is reported for one crew. */
  private static Set<Role> asked(boolean informed) {
    return informed ? Set.of(Role.FORBIDS_AN_ACT, Role.INFORMATION) : Set.of(Role.FORBIDS_AN_ACT);
  }

  private List<SpreadInput> inputs(List<CrewCase> cases) {
    return SpreadInputs.of(boat, model, rules, spreads, better, most(cases)).stream()
        .map(input -> input.proved(proved.flatMap(HullCorrection::mayBeOff)))
        .toList();
  }

  private static int most(List<CrewCase> cases) {
    return cases.stream().mapToInt(CrewCase::people).max().orElse(0);
  }

  /** The boats drawn for cases that should all be allowed. */
  private SpreadDraws draws(List<CrewCase> cases, IntFunction<Runnable> progress) {
    return draws(most(cases), 0, cases, inputs(cases), progress);
  }

  private SpreadDraws draws(
      int people,
      double each,
      List<CrewCase> cases,
      List<SpreadInput> inputs,
      IntFunction<Runnable> progress) {
    CrewMargins margins = new CrewMargins(boat, model, rules, inputs, cases, known);
    List<Distribution> distributions = inputs.stream().map(SpreadInput::distribution).toList();
    List<PropagatedResult> results =
        FirstOrderPropagation.of(distributions, margins, 1, progress.apply(2 * inputs.size() + 1));
    return new SpreadDraws(people, each, inputs, margins.figures(), results, known);
  }

  /** The same of the cases that are close; of the others nothing. */
  private Map<CrewCase, Double> inFull(SpreadDraws draws, IntFunction<Runnable> progress) {
    List<CrewCase> close = draws.close();
    return close.isEmpty() ? Map.of() : inFull(close, draws.inputs(), progress);
  }

  /** For each case the share of boats, computed in full, in which every figure of it is met. */
  private Map<CrewCase, Double> inFull(
      List<CrewCase> cases, List<SpreadInput> inputs, IntFunction<Runnable> progress) {
    CrewMargins margins = new CrewMargins(boat, model, rules, inputs, cases, known);
    List<SampledResult> least =
        MonteCarloPropagation.of(
            inputs.stream().map(SpreadInput::distribution).toList(),
            values -> margins.leastOfEach(cases, margins.results(values)),
            IN_FULL,
            SEED,
            progress.apply(IN_FULL));
    Map<CrewCase, Double> shares = new HashMap<>();
    for (int i = 0; i < cases.size(); i++) {
      shares.put(cases.get(i), least.get(i).shareAtLeast(0));
    }
    return shares;
  }
}
