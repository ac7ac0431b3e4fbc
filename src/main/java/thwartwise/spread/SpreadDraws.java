package thwartwise.spread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.checks.Margin;
import thwartwise.crew.Seating;
import thwartwise.loadcase.Allowance;
import thwartwise.spread.CrewMargins.Figure;
import thwartwise.uncertainty.CoverageInterval;
import thwartwise.uncertainty.Distribution;
import thwartwise.uncertainty.MonteCarloPropagation;
import thwartwise.uncertainty.PropagatedResult;
import thwartwise.uncertainty.SampledResult;

/** Boats drawn by chance from what the moves of each measurement showed. */
record SpreadDraws(
    int recommended,
    double each,
    List<SpreadInput> inputs,
    List<Figure> figures,
    List<PropagatedResult> results) {

  private static final int DRAWS = 20_000;
  private static final long SEED = 21;
  private static final double CLOSE = 2;

  /** No more than so many measurements are named. */
  private static final int NAMED = 2;

  /** Thirty measurements each below this part of the variance change a spread by 3 %. */
  private static final double MATTERS = 0.002;

  /** A smaller part of the variance is not worth ten minutes. */
  private static final double WORTH = 0.1;

  /**
   * Cases that should be allowed, look sure enough to second order, and have a figure within two
   * spreads of its limit.
   */
  List<CrewCase> close() {
    Map<CrewCase, Double> shares = shares();
    return told()
        .filter(c -> shares.get(c) >= BoatSpread.ENOUGH)
        .filter(c -> limiting(c).anyMatch(this::isClose))
        .toList();
  }

  private boolean isClose(int figure) {
    PropagatedResult result = results.get(figure);
    return !(result.best() > CLOSE * result.standardUncertainty());
  }

  /** Those of so many people as are recommended, or fewer. */
  private Stream<CrewCase> told() {
    return figures.stream()
        .filter(SpreadDraws::isLimiting)
        .map(Figure::crew)
        .filter(c -> c.people() <= recommended)
        .distinct();
  }

  private IntStream limiting(CrewCase of) {
    return IntStream.range(0, figures.size())
        .filter(i -> figures.get(i).crew() == of && isLimiting(figures.get(i)));
  }

  /** Of each case that should be allowed the share in which all of it is met, to second order. */
  private Map<CrewCase, Double> shares() {
    List<CrewCase> cases = told().toList();
    List<SampledResult> least =
        sampled(
            Optional.empty(),
            all ->
                cases.stream()
                    .mapToDouble(c -> limiting(c).mapToDouble(i -> all[i]).min().orElse(0))
                    .toArray());
    Map<CrewCase, Double> shares = new HashMap<>();
    for (int i = 0; i < cases.size(); i++) {
      shares.put(cases.get(i), cases.isEmpty() ? 1 : least.get(i).shareAtLeast(0));
    }
    return shares;
  }

  /**
   * The seatings that are not sure enough, each by itself; where only all of them together are not,
   * the least sure.
   */
  List<Seating> unsure(Map<CrewCase, Double> inFull) {
    Map<CrewCase, Double> shares = shares();
    inFull.forEach((crew, share) -> shares.merge(crew, share, Math::min));
    List<CrewCase> worstFirst = told().sorted(Comparator.comparingDouble(shares::get)).toList();
    List<CrewCase> tooFew =
        worstFirst.stream().filter(c -> shares.get(c) < BoatSpread.ENOUGH).toList();
    return (tooFew.isEmpty()
            ? worstFirst.stream().filter(c -> c.people() > 0).limit(1)
            : tooFew.stream())
        .flatMap(c -> c.seating().stream())
        .distinct()
        .toList();
  }

  /** Only what limits crew, of people who are not those of the boat file, decides how many. */
  private static boolean isLimiting(Figure figure) {
    return figure.limitsCrew() && !figure.crew().isAsLoaded();
  }

  BoatSpread answer(double adult, Allowance unsaid, Map<CrewCase, Double> inFull) {
    List<SampledResult> drawn = drawn(Optional.empty());
    List<CrewChance> chances = chances(drawn.get(0), inFull);
    return new BoatSpread(
        adult,
        recommended,
        each,
        recommended,
        each,
        chances,
        spreads(drawn, f -> isLimiting(f) && f.crew().people() == recommended),
        List.of(),
        spreads(drawn, f -> f.crew().isAsLoaded()),
        again(chances),
        inputs.size(),
        unsaid);
  }

  /** The answer with the figures that decide nothing. */
  BoatSpread findings(BoatSpread judged) {
    List<SampledResult> drawn = drawn(Optional.empty());
    return judged.with(
        spreads(drawn, f -> !f.crew().isAsLoaded()), spreads(drawn, f -> f.crew().isAsLoaded()));
  }

  /** Measurements that make up more than next to nothing of the spread of any figure. */
  List<SpreadInput> mattering() {
    return IntStream.range(0, inputs.size())
        .filter(i -> results.stream().anyMatch(r -> !(r.share(i) < MATTERS)))
        .mapToObj(inputs::get)
        .toList();
  }

  /**
   * The number of people carried first, then every figure.
   *
   * @param again a measurement taken again in a better way, that came out one spread to the good
   *     side
   */
  private List<SampledResult> drawn(Optional<Again> again) {
    return sampled(again, this::carriedFirst);
  }

  private List<SampledResult> sampled(Optional<Again> again, UnaryOperator<double[]> told) {
    List<Distribution> distributions = inputs.stream().map(SpreadInput::distribution).toList();
    return MonteCarloPropagation.of(
        distributions, values -> told.apply(rooms(deviations(values, again))), DRAWS, SEED);
  }

  private double[] rooms(double[] deviations) {
    return results.stream().mapToDouble(r -> r.at(deviations)).toArray();
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

  private double[] carriedFirst(double[] rooms) {
    double[] all = new double[1 + rooms.length];
    int broken = Integer.MAX_VALUE;
    for (int i = 0; i < rooms.length; i++) {
      all[1 + i] = rooms[i];
      if (isLimiting(figures.get(i)) && !(all[1 + i] >= 0)) {
        broken = Math.min(broken, figures.get(i).crew().people());
      }
    }
    all[0] = Math.min(broken - 1, most());
    return all;
  }

  private int most() {
    return figures.stream()
        .filter(SpreadDraws::isLimiting)
        .mapToInt(f -> f.crew().people())
        .max()
        .orElse(0);
  }

  /** Of so many people or fewer: the poorer of second order and of what was worked out in full. */
  private List<CrewChance> chances(SampledResult carried, Map<CrewCase, Double> inFull) {
    return IntStream.rangeClosed(1, most())
        .mapToObj(
            n ->
                new CrewChance(
                    n,
                    inFull.entrySet().stream()
                        .filter(e -> e.getKey().people() <= n)
                        .mapToDouble(Map.Entry::getValue)
                        .reduce(carried.shareAtLeast(n), Math::min)))
        .toList();
  }

  private List<FigureSpread> spreads(List<SampledResult> drawn, Predicate<Figure> wanted) {
    List<FigureSpread> all = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      if (!wanted.test(figure)) {
        continue;
      }
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
              .anyMatch(f -> f.question().equals(spread.question()) && f.share() <= spread.share());
      if (!surer) {
        all.removeIf(f -> f.question().equals(spread.question()));
        all.add(spread);
      }
    }
    all.sort(Comparator.comparingDouble(FigureSpread::share).thenComparing(SpreadDraws::nearness));
    return all;
  }

  /**
   * Of the figure itself, from that of how far it is inside its limit: the wider of what was drawn
   * to second order and two spreads to first order, since near a kink either alone held the true
   * figure too seldom. NaN where no boat drawn has it, as with a crew that sinks the boat.
   */
  private static CoverageInterval range(
      Margin margin, SampledResult drawn, PropagatedResult moved) {
    if (drawn.missing() == drawn.draws()) {
      return new CoverageInterval(Double.NaN, Double.NaN);
    }
    CoverageInterval room = drawn.symmetricInterval(BoatSpread.ENOUGH).with(moved.interval(CLOSE));
    return margin.atLeast()
        ? new CoverageInterval(margin.limit() + room.low(), margin.limit() + room.high())
        : new CoverageInterval(margin.limit() - room.high(), margin.limit() - room.low());
  }

  private static double nearness(FigureSpread figure) {
    return figure.margin().room() / figure.spread();
  }

  /** Of what governs the recommended number where it is not sure, else one more. */
  private List<Remeasurement> again(List<CrewChance> chances) {
    boolean sure = recommended == 0 || chances.get(recommended - 1).share() >= BoatSpread.ENOUGH;
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
    while (people < wanted && carried.shareAtLeast(people + 1) >= BoatSpread.ENOUGH) {
      people++;
    }
    return people;
  }

  /** The figure that stands most in the way of so many people. */
  private Optional<Integer> governing(int people) {
    return IntStream.range(0, figures.size())
        .filter(i -> isLimiting(figures.get(i)) && figures.get(i).crew().people() == people)
        .filter(i -> Double.isFinite(results.get(i).standardUncertainty()))
        .boxed()
        .min(
            Comparator.comparingDouble(
                i -> results.get(i).best() / results.get(i).standardUncertainty()));
  }
}
