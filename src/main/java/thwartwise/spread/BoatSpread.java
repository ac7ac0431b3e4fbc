package thwartwise.spread;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.HullCorrection;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.checks.Margin;
import thwartwise.crew.AppliedRules;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.Limits;
import thwartwise.crew.Seating;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;
import thwartwise.spread.CrewMargins.Figure;
import thwartwise.uncertainty.CoverageInterval;
import thwartwise.uncertainty.Distribution;
import thwartwise.uncertainty.FirstOrderPropagation;
import thwartwise.uncertainty.MonteCarloPropagation;
import thwartwise.uncertainty.PropagatedResult;
import thwartwise.uncertainty.SampledResult;

/**
 * How sure the answer for a boat is. Every measurement is moved by its spread up and down; the
 * margins of each crew follow these moves to second order, and many boats are drawn by chance from
 * that. Where a figure of the recommended crew lies within two spreads of its limit, some hundred
 * boats are drawn and worked out in full besides, and the poorer share counts.
 *
 * @param searched adults of the design mass, as the search under the allowance found them
 * @param recommended no more than those, and sure enough
 * @param each what each of them weighs, kg
 * @param chances by number of people, from one to one more than recommended
 * @param figures of the recommended crew, the least sure first
 * @param asLoaded figures of the boat as its file loads it, the least sure first
 * @param again what is worth measuring again, the most useful first
 * @param inputs how many measurements were moved
 * @param unsaid what a measurement may be off where nobody said how it was taken
 */
public record BoatSpread(
    int searched,
    int recommended,
    double each,
    List<CrewChance> chances,
    List<FigureSpread> figures,
    List<FigureSpread> asLoaded,
    List<Remeasurement> again,
    int inputs,
    Allowance unsaid) {

  /** What a finding must be met in to meet. */
  public static final double ENOUGH = 0.95;

  private static final int DRAWS = 20_000;
  private static final long SEED = 21;

  /** A share of 95 in 100 scatters by 1.5 then. */
  private static final int IN_FULL = 200;

  private static final double CLOSE = 2;

  /** Loaded boats looked at for each number of people. */
  private static final int CASES = 2;

  /** No more than so many measurements are named. */
  private static final int NAMED = 2;

  /** A smaller part of the variance is not worth ten minutes. */
  private static final double WORTH = 0.1;

  /** Of so many people: one for nobody, zero for a crew that was not looked at. */
  public double share(int people) {
    return chances.stream()
        .filter(c -> c.people() == people)
        .mapToDouble(CrewChance::share)
        .findFirst()
        .orElse(people == 0 ? 1 : 0);
  }

  /** The most people that are sure enough, no more than are recommended. */
  public int sure() {
    return IntStream.rangeClosed(0, recommended).filter(n -> share(n) >= ENOUGH).max().orElse(0);
  }

  public BoatSpread {
    chances = List.copyOf(chances);
    figures = List.copyOf(figures);
    asLoaded = List.copyOf(asLoaded);
    again = List.copyOf(again);
  }

  /**
   * Empty where nothing is recommended: there is no answer to be sure of.
   *
   * @param spreads how far a measurement may be off, by how it was taken
   * @param better kinds of measurement that were taken the better way
   * @param progress is told how many evaluations there are, and run after each of them
   * @throws thwartwise.hull.UnusableBoat when the measurements contradict each other
   */
  public static Optional<BoatSpread> of(
      Boat measured,
      RuleBook book,
      RuleSet spreads,
      Set<InputKind> better,
      LocalDate today,
      IntFunction<Runnable> progress) {
    BoatModel model = BoatModel.of(measured, today);
    AppliedRules applied = new AppliedRules(model, book);
    RuleSet rules = applied.inForce();
    CrewAssessment assessment = new CrewAssessment(model, rules);
    Limits limits = new Limits(assessment, rules, applied.caps());
    int people = applied.capacity(limits).people();
    if (!applied.loadRefusals().isEmpty() || people == 0) {
      return Optional.empty();
    }
    double each = rules.value("design-person");
    Optional<HullCorrection> proved = HullCorrection.of(measured);
    Boat boat = proved.map(HullCorrection::inForce).orElse(measured).withProofs(List.of());
    List<CrewCase> cases = cases(assessment, limits, people, each);
    List<SpreadInput> inputs =
        SpreadInputs.of(boat, model, rules, spreads, better, most(cases)).stream()
            .map(input -> input.proved(proved.flatMap(HullCorrection::mayBeOff)))
            .toList();
    CrewMargins margins = new CrewMargins(boat, model, rules, inputs, cases);
    List<Distribution> distributions = inputs.stream().map(SpreadInput::distribution).toList();
    List<PropagatedResult> results =
        FirstOrderPropagation.of(distributions, margins, 1, progress.apply(2 * inputs.size() + 1));
    Draws draws = new Draws(people, each, inputs, margins.figures(), results);
    double inFull =
        draws.isClose()
            ? inFull(margins.of(c -> c.people() == people), distributions, progress)
            : 1;
    return Optional.of(draws.answer(Allowance.of(rules, model), inFull));
  }

  /** The share of boats, each worked out in full, in which every figure of a crew is met. */
  private static double inFull(
      CrewMargins margins, List<Distribution> distributions, IntFunction<Runnable> progress) {
    return MonteCarloPropagation.of(
            distributions,
            values -> new double[] {Arrays.stream(margins.results(values)).min().orElse(0)},
            IN_FULL,
            SEED,
            progress.apply(IN_FULL))
        .get(0)
        .shareAtLeast(0);
  }

  private static int most(List<CrewCase> cases) {
    return cases.stream().mapToInt(CrewCase::people).max().orElse(0);
  }

  /** From nobody to one more than recommended; that number is looked at where there is room. */
  private static List<CrewCase> cases(
      CrewAssessment assessment, Limits limits, int people, double each) {
    List<CrewCase> cases = new ArrayList<>();
    for (int n = 0; n <= people + 1; n++) {
      List<Seating> seatings =
          n > 0 && n <= people
              ? limits.crew(n).seatings()
              : Seating.of(n, assessment.model().boat().places());
      seatings.stream()
          .max(Comparator.comparingDouble(s -> nearest(assessment, s, each)))
          .ifPresent(s -> cases.addAll(worst(assessment, s, each)));
    }
    return cases;
  }

  private static double nearest(CrewAssessment assessment, Seating seating, double each) {
    return assessment.loadedBoats(seating, each).stream()
        .limit(1)
        .mapToDouble(assessment::nearness)
        .sum();
  }

  /** The loaded boats of one seating that come nearest to a limit. */
  private static List<CrewCase> worst(CrewAssessment assessment, Seating seating, double each) {
    return assessment.loadedBoats(seating, each).stream()
        .sorted(Comparator.comparingDouble(assessment::nearness))
        .limit(CASES)
        .map(loaded -> asCase(assessment.model(), seating, loaded))
        .toList();
  }

  private static CrewCase asCase(BoatModel model, Seating seating, LoadedBoat loaded) {
    List<Double> masses = loaded.people().stream().map(b -> b.mass()).toList();
    Packing packing =
        seating.packings(model.boat().places()).stream()
            .filter(p -> seating.bodies(model, masses, p).equals(loaded.people()))
            .findFirst()
            .orElseThrow();
    return new CrewCase(seating, masses, packing);
  }

  /** Boats drawn by chance from what the moves of each measurement showed. */
  private record Draws(
      int recommended,
      double each,
      List<SpreadInput> inputs,
      List<Figure> figures,
      List<PropagatedResult> results) {

    /** Whether a figure of the recommended crew lies within two spreads of its limit. */
    boolean isClose() {
      return IntStream.range(0, figures.size())
          .filter(i -> figures.get(i).crew().people() == recommended)
          .anyMatch(i -> !(results.get(i).best() > CLOSE * results.get(i).standardUncertainty()));
    }

    BoatSpread answer(Allowance unsaid, double inFull) {
      List<SampledResult> drawn = drawn(Optional.empty());
      List<FigureSpread> spreads = spreads(drawn);
      List<CrewChance> chances = chances(drawn.get(0), inFull);
      return new BoatSpread(
          recommended,
          recommended,
          each,
          chances,
          spreads,
          List.of(),
          again(chances),
          inputs.size(),
          unsaid);
    }

    /**
     * The number of people carried first, then every figure.
     *
     * @param again a measurement taken again in a better way, that came out one spread to the good
     *     side
     */
    private List<SampledResult> drawn(Optional<Again> again) {
      List<Distribution> distributions = inputs.stream().map(SpreadInput::distribution).toList();
      return MonteCarloPropagation.of(
          distributions, values -> of(deviations(values, again)), DRAWS, SEED);
    }

    private record Again(int input, double side) {}

    private double[] deviations(double[] values, Optional<Again> again) {
      double[] deviations = new double[values.length];
      for (int i = 0; i < values.length; i++) {
        Distribution one = inputs.get(i).distribution();
        deviations[i] = (values[i] - one.mean()) / one.standardDeviation();
      }
      again.ifPresent(
          a -> deviations[a.input] = a.side + inputs.get(a.input).left() * deviations[a.input]);
      return deviations;
    }

    private double[] of(double[] deviations) {
      double[] all = new double[1 + results.size()];
      int broken = Integer.MAX_VALUE;
      for (int i = 0; i < results.size(); i++) {
        all[1 + i] = results.get(i).at(deviations);
        if (!(all[1 + i] >= 0)) {
          broken = Math.min(broken, figures.get(i).crew().people());
        }
      }
      all[0] = Math.min(broken - 1, most());
      return all;
    }

    private int most() {
      return figures.stream().mapToInt(f -> f.crew().people()).max().orElse(0);
    }

    /** One more than the recommended crew is never surer than that. */
    private List<CrewChance> chances(SampledResult carried, double inFull) {
      return IntStream.rangeClosed(1, most())
          .mapToObj(
              n ->
                  new CrewChance(
                      n, Math.min(carried.shareAtLeast(n), n < recommended ? 1 : inFull)))
          .toList();
    }

    private List<FigureSpread> spreads(List<SampledResult> drawn) {
      List<FigureSpread> all = new ArrayList<>();
      for (int i = 0; i < figures.size(); i++) {
        Figure figure = figures.get(i);
        FigureSpread spread =
            new FigureSpread(
                figure.crew().people(),
                figure.question(),
                figure.margin(),
                results.get(i).standardUncertainty(),
                range(figure.margin(), drawn.get(1 + i), results.get(i)),
                drawn.get(1 + i).shareAtLeast(0));
        boolean surer =
            all.stream()
                .anyMatch(
                    f -> f.question().equals(spread.question()) && f.share() <= spread.share());
        if (spread.people() == recommended && !surer) {
          all.removeIf(f -> f.question().equals(spread.question()));
          all.add(spread);
        }
      }
      all.sort(Comparator.comparingDouble(FigureSpread::share).thenComparing(Draws::nearness));
      return all;
    }

    /**
     * Of the figure itself, from that of how far it is inside its limit: the wider of what was
     * drawn to second order and two spreads to first order, since near a kink either alone held the
     * true figure too seldom. NaN where no boat drawn has it, as with a crew that sinks the boat.
     */
    private static CoverageInterval range(
        Margin margin, SampledResult drawn, PropagatedResult moved) {
      if (drawn.missing() == drawn.draws()) {
        return new CoverageInterval(Double.NaN, Double.NaN);
      }
      CoverageInterval room = drawn.symmetricInterval(ENOUGH).with(moved.interval(CLOSE));
      return margin.atLeast()
          ? new CoverageInterval(margin.limit() + room.low(), margin.limit() + room.high())
          : new CoverageInterval(margin.limit() - room.high(), margin.limit() - room.low());
    }

    private static double nearness(FigureSpread figure) {
      return figure.margin().room() / figure.spread();
    }

    /** Of what governs the recommended number where it is not sure, else one more. */
    private List<Remeasurement> again(List<CrewChance> chances) {
      boolean sure = chances.get(recommended - 1).share() >= ENOUGH;
      int wanted = sure ? Math.min(recommended + 1, most()) : recommended;
      return governing(wanted).stream()
          .flatMap(governs -> again(governs, wanted))
          .sorted(
              Comparator.comparingInt(Remeasurement::people)
                  .thenComparingDouble(Remeasurement::share)
                  .reversed())
          .limit(NAMED)
          .toList();
    }

    private Stream<Remeasurement> again(int governs, int wanted) {
      PropagatedResult result = results.get(governs);
      return IntStream.range(0, inputs.size())
          .filter(i -> result.share(i) * (1 - inputs.get(i).left()) >= WORTH)
          .mapToObj(
              i ->
                  new Remeasurement(
                      inputs.get(i).kind(),
                      inputs.get(i).item(),
                      figures.get(governs).question(),
                      result.share(i),
                      reached(new Again(i, Math.signum(result.contribution(i))), wanted)));
    }

    /** How many are sure enough then, no more than wanted. */
    private int reached(Again again, int wanted) {
      SampledResult carried = drawn(Optional.of(again)).get(0);
      int people = 0;
      while (people < wanted && carried.shareAtLeast(people + 1) >= ENOUGH) {
        people++;
      }
      return people;
    }

    /** The figure that stands most in the way of so many people. */
    private Optional<Integer> governing(int people) {
      return IntStream.range(0, figures.size())
          .filter(i -> figures.get(i).crew().people() == people)
          .filter(i -> Double.isFinite(results.get(i).standardUncertainty()))
          .boxed()
          .min(
              Comparator.comparingDouble(
                  i -> results.get(i).best() / results.get(i).standardUncertainty()));
    }
  }
}
