package thwartwise.spread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.checks.Margin;
import thwartwise.crew.Lazy;
import thwartwise.crew.Seating;
import thwartwise.loadcase.Allowance;
import thwartwise.spread.CrewMargins.Figure;
import thwartwise.uncertainty.CoverageInterval;
import thwartwise.uncertainty.PropagatedResult;
import thwartwise.uncertainty.SampledResult;

/** Boats drawn at random from the effects of each measurement. */
final class SpreadDraws {
  private static final double CLOSE = 2;

  /** The greatest number of measurements named. */
  private static final int NAMED = 2;

  /** Thirty measurements each below this share of the variance change a spread by 3 %. */
  private static final double MATTERS = 0.002;

  /** A smaller share of the variance is not worth ten minutes. */
  private static final double WORTH = 0.1;

  private final int recommended;
  private final double each;
  private final List<SpreadInput> inputs;
  private final List<Figure> figures;
  private final List<PropagatedResult> results;
  private final Supplier<DrawnRooms> drawn;
  private final Supplier<Map<CrewCase, Double>> shares = Lazy.of(this::sharesDrawn);

  /**
   * @param each mass of the recommended people, kg
   * @param results of each figure, from moves of each measurement
   * @param known the boats drawn for other cases
   */
  SpreadDraws(
      int recommended,
      double each,
      List<SpreadInput> inputs,
      List<Figure> figures,
      List<PropagatedResult> results,
      CaseFigures known) {
    this.recommended = recommended;
    this.each = each;
    this.inputs = inputs;
    this.figures = figures;
    this.results = results;
    this.drawn = Lazy.of(() -> DrawnRooms.of(results, known.deviations(inputs), CaseFigures.DRAWS));
  }

  List<SpreadInput> inputs() {
    return inputs;
  }

  /**
   * Cases that should be allowed, look sure enough to second order, and have a figure within two
   * spreads of its limit.
   */
  List<CrewCase> close() {
    return told()
        .filter(c -> shares.get().get(c) >= BoatSpread.ENOUGH)
        .filter(c -> limiting(c).anyMatch(this::isClose))
        .toList();
  }

  private boolean isClose(int figure) {
    PropagatedResult result = results.get(figure);
    return !(result.best() > CLOSE * result.standardUncertainty());
  }

  /** The cases of the recommended number of people or fewer. */
  private Stream<CrewCase> told() {
    return figures.stream()
        .filter(SpreadDraws::isLimiting)
        .map(Figure::crew)
        .filter(c -> c.people() <= recommended)
        .distinct();
  }

  private IntStream limiting(CrewCase of) {
    return IntStream.range(0, figures.size())
        .filter(i -> figures.get(i).crew().equals(of) && isLimiting(figures.get(i)));
  }

  /** For each case that should be allowed, the share in which all of it is met, to second order. */
  private Map<CrewCase, Double> sharesDrawn() {
    Map<CrewCase, Double> found = new HashMap<>();
    for (CrewCase crew : told().toList()) {
      found.put(crew, drawn.get().share(limiting(crew).toArray()));
    }
    return found;
  }

  /**
   * Of one case that should be allowed: the poorer of the share to second order and of what was
   * worked out in full.
   */
  double share(CrewCase crew, Map<CrewCase, Double> inFull) {
    return Math.min(shares.get().get(crew), inFull.getOrDefault(crew, 1.0));
  }

  /** The share of boats in which all of a case is met, to second order. */
  Map<CrewCase, Double> shares() {
    return shares.get();
  }

  /**
   * The seatings that are not sure enough, each by itself; where only all of them together are not,
   * the least sure.
   */
  List<Seating> unsure(Map<CrewCase, Double> inFull) {
    Map<CrewCase, Double> poorer = new HashMap<>(shares.get());
    inFull.forEach((crew, share) -> poorer.merge(crew, share, Math::min));
    List<CrewCase> worstFirst = told().sorted(Comparator.comparingDouble(poorer::get)).toList();
    List<CrewCase> tooFew =
        worstFirst.stream().filter(c -> poorer.get(c) < BoatSpread.ENOUGH).toList();
    return (tooFew.isEmpty()
            ? worstFirst.stream().filter(c -> c.people() > 0).limit(1)
            : tooFew.stream())
        .flatMap(c -> c.seating().stream())
        .distinct()
        .toList();
  }

  /**
   * Whether a figure decides the number of people: it limits the crew, and its people are not those
   * of the boat file.
   */
  private static boolean isLimiting(Figure figure) {
    return figure.limitsCrew() && !figure.crew().isAsLoaded();
  }

  BoatSpread answer(double adult, Allowance unsaid, Map<CrewCase, Double> inFull) {
    List<CrewChance> chances = chances(inFull);
    return new BoatSpread(
        adult,
        recommended,
        each,
        recommended,
        each,
        chances,
        spreads(f -> isLimiting(f) && f.crew().people() == recommended),
        List.of(),
        spreads(f -> f.crew().isAsLoaded()),
        again(chances),
        inputs.size(),
        unsaid);
  }

  /** The answer with the figures that decide nothing. */
  BoatSpread findings(BoatSpread judged) {
    return judged.with(spreads(f -> !f.crew().isAsLoaded()), spreads(f -> f.crew().isAsLoaded()));
  }

  /** Measurements with a noticeable share in the spread of any figure. */
  List<SpreadInput> mattering() {
    return IntStream.range(0, inputs.size())
        .filter(i -> results.stream().anyMatch(r -> !(r.share(i) < MATTERS)))
        .mapToObj(inputs::get)
        .toList();
  }

  /** The number of people that each of the boats drawn carries. */
  private int[] carried(DrawnRooms boats) {
    int[] carried = new int[boats.boats()];
    Arrays.fill(carried, most());
    for (int i = 0; i < figures.size(); i++) {
      if (isLimiting(figures.get(i))) {
        lower(carried, boats.rooms().get(i), figures.get(i).crew().people() - 1);
      }
    }
    return carried;
  }

  private static void lower(int[] carried, double[] rooms, int people) {
    for (int boat = 0; boat < carried.length; boat++) {
      if (!(rooms[boat] >= 0)) {
        carried[boat] = Math.min(carried[boat], people);
      }
    }
  }

  private int most() {
    return figures.stream()
        .filter(SpreadDraws::isLimiting)
        .mapToInt(f -> f.crew().people())
        .max()
        .orElse(0);
  }

  /**
   * The shares for a number of people or fewer: the lesser of second order and full computation.
   */
  private List<CrewChance> chances(Map<CrewCase, Double> inFull) {
    int[] carried = carried(drawn.get());
    return IntStream.rangeClosed(1, most())
        .mapToObj(
            n ->
                new CrewChance(
                    n,
                    inFull.entrySet().stream()
                        .filter(e -> e.getKey().people() <= n)
                        .mapToDouble(Map.Entry::getValue)
                        .reduce(shareCarrying(carried, n), Math::min)))
        .toList();
  }

  private static double shareCarrying(int[] carried, int people) {
    return (double) Arrays.stream(carried).filter(n -> n >= people).count() / carried.length;
  }

  private List<FigureSpread> spreads(Predicate<Figure> wanted) {
    List<FigureSpread> all = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      if (!wanted.test(figure)) {
        continue;
      }
      SampledResult sample = SampledResult.of(drawn.get().rooms().get(i));
      FigureSpread spread =
          new FigureSpread(
              figure.crew().people(),
              figure.question(),
              figure.margin(),
              results.get(i).standardUncertainty(),
              range(figure.margin(), sample, results.get(i)),
              sample.shareAtLeast(0));
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
   * The range of a figure, from that of its margin: the wider of the random second-order result and
   * two first-order spreads, because near a kink either alone held the true figure too seldom. NaN
   * where no boat drawn has the figure, as with a crew that sinks the boat.
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

  /**
   * The remeasurements of what governs the recommended number where it is not sure, otherwise one
   * more.
   */
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
                    reached(i, Math.signum(result.contribution(i)), wanted)));
  }

  /**
   * The number of people that is sure enough once a measurement is repeated in a better way, no
   * more than wanted.
   */
  private int reached(int input, double side, int wanted) {
    int[] carried = carried(drawn.get().measuredAgain(input, side, inputs.get(input).left()));
    int people = 0;
    while (people < wanted && shareCarrying(carried, people + 1) >= BoatSpread.ENOUGH) {
      people++;
    }
    return people;
  }

  /** The figure that prevents this number of people most. */
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
