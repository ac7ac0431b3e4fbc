package thwartwise.spread;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.crew.Seating;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.PlainHulls;
import thwartwise.report.CheckWords;
import thwartwise.rules.RuleSet;
import thwartwise.uncertainty.CoverageInterval;
import thwartwise.uncertainty.Distribution;
import thwartwise.uncertainty.FirstOrderPropagation;
import thwartwise.uncertainty.MonteCarloPropagation;
import thwartwise.uncertainty.PropagatedResult;
import thwartwise.uncertainty.SampledResult;

/**
 * A boat is taken for the true one and measured many times with known errors; each time the spread
 * of its figures is worked out from what was measured alone. How often do 1.96 of these spreads
 * hold the true figure, and how often does the range that is told? It should be 93 to 97 in 100;
 * how often the boat is worse than anything that range has is told, too. And of a box whose
 * freeboard falls just short of its limit, how often is it said to be met in 95 of 100? At most 5
 * in 100. Run by hand:
 *
 * <pre>
 * SpreadCoverage BOXES PRAMS
 * </pre>
 */
final class SpreadCoverage {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final RuleSet SPREADS = RuleSetFile.measuringSpreads();
  private static final double NINETY_FIVE = 1.96;
  private static final double ONE_SIDED = 1.6448536;

  private SpreadCoverage() {}

  private record Measured(
      List<Double> rooms, List<Double> spreads, List<CoverageInterval> ranges) {}

  /** A boat with one crew, its inputs and margins. */
  private record Crewed(Boat boat, CrewCase crew) {
    List<SpreadInput> inputs() {
      BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
      return SpreadInputs.of(boat, model, RULES, SPREADS, Set.of(), crew.people());
    }

    CrewMargins margins() {
      BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
      return new CrewMargins(boat, model, RULES, inputs(), List.of(crew), new CaseFigures());
    }

    /** The same boat as somebody measures it, people and what is in the water as they are. */
    Crewed measured(SplittableRandom random) {
      List<SpreadInput> inputs = inputs();
      double[] read =
          inputs.stream()
              .mapToDouble(
                  i -> isOfTheBoat(i) ? i.distribution().draw(random) : i.distribution().mean())
              .toArray();
      return new Crewed(VariedBoat.asMeasured(boat, crew.people()).at(inputs, read).boat(), crew);
    }

    Measured answer() {
      List<Distribution> distributions = new ArrayList<>();
      List<SpreadInput> inputs = inputs();
      inputs.forEach(i -> distributions.add(i.distribution()));
      List<PropagatedResult> results = FirstOrderPropagation.of(distributions, margins(), 1);
      return new Measured(
          results.stream().map(PropagatedResult::best).toList(),
          results.stream().map(r -> ofTheBoat(r, inputs)).toList(),
          ranges(results, inputs, distributions));
    }

    /** As the answer for a boat tells it: the wider of second order and two spreads. */
    private static List<CoverageInterval> ranges(
        List<PropagatedResult> results, List<SpreadInput> inputs, List<Distribution> all) {
      List<SampledResult> drawn =
          MonteCarloPropagation.of(all, values -> secondOrder(results, inputs, values), 400, 9);
      return IntStream.range(0, results.size())
          .mapToObj(i -> range(drawn.get(i), results.get(i), ofTheBoat(results.get(i), inputs)))
          .toList();
    }

    private static CoverageInterval range(
        SampledResult drawn, PropagatedResult result, double spread) {
      return drawn.missing() == drawn.draws()
          ? new CoverageInterval(Double.NaN, Double.NaN)
          : drawn
              .symmetricInterval(0.95)
              .with(new CoverageInterval(result.best() - 2 * spread, result.best() + 2 * spread));
    }

    /** As the answer for a boat draws it. */
    private static double[] secondOrder(
        List<PropagatedResult> results, List<SpreadInput> inputs, double[] values) {
      double[][] deviations = new double[values.length][1];
      for (int i = 0; i < values.length; i++) {
        SpreadInput input = inputs.get(i);
        deviations[i][0] =
            isOfTheBoat(input) ? (values[i] - input.distribution().mean()) / input.spread() : 0;
      }
      return results.stream().mapToDouble(r -> r.at(deviations, 1)[0]).toArray();
    }

    private static double ofTheBoat(PropagatedResult result, List<SpreadInput> inputs) {
      return Math.sqrt(
          IntStream.range(0, inputs.size())
              .filter(i -> isOfTheBoat(inputs.get(i)))
              .mapToDouble(result::contribution)
              .map(c -> c * c)
              .sum());
    }

    /** What a boat file holds; litres that count and people's masses stand in none. */
    private static boolean isOfTheBoat(SpreadInput input) {
      return input.kind() != InputKind.CHAMBER_VOLUME && input.kind() != InputKind.PERSON_MASS;
    }
  }

  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    CrewCase nobody = new CrewCase.SeatedCrew(new Seating(List.of(0)), List.of(), Packing.SPREAD);
    CrewCase adult =
        new CrewCase.SeatedCrew(new Seating(List.of(1)), List.of(95.0), Packing.SPREAD);
    int boxes = Integer.parseInt(args[0]);
    coverage("box by the stern", new Crewed(TextbookBox.weighing(1000, -0.2), nobody), boxes, out);
    atTheLimit(justShort(nobody), boxes, out);
    coverage(
        "pram, one adult", new Crewed(PlainHulls.pram(), adult), Integer.parseInt(args[1]), out);
  }

  /** The box whose weight lies so far aft that its lowest corner is a millimetre too low. */
  private static Crewed justShort(CrewCase nobody) {
    double low = -0.6;
    double high = 0;
    while (high - low > 1e-6) {
      double middle = (low + high) / 2;
      if (freeboard(new Crewed(TextbookBox.weighing(1000, middle), nobody)) < -0.001) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new Crewed(TextbookBox.weighing(1000, low), nobody);
  }

  private static double freeboard(Crewed box) {
    return box.margins().figures().get(0).margin().room();
  }

  private static List<Measured> answers(Crewed truth, int times) {
    SplittableRandom root = new SplittableRandom(2000);
    List<SplittableRandom> randoms = IntStream.range(0, times).mapToObj(i -> root.split()).toList();
    return randoms.parallelStream().map(r -> truth.measured(r).answer()).toList();
  }

  private static void coverage(String name, Crewed truth, int times, PrintStream out) {
    CrewMargins margins = truth.margins();
    List<Measured> all = answers(truth, times);
    for (int f = 0; f < margins.figures().size(); f++) {
      int figure = f;
      double room = margins.figures().get(f).margin().room();
      long held =
          all.stream()
              .filter(
                  m ->
                      Math.abs(m.rooms().get(figure) - room)
                          <= NINETY_FIVE * m.spreads().get(figure))
              .count();
      long ranged = all.stream().filter(m -> m.ranges().get(figure).contains(room)).count();
      // Only these are dangerous: the boat is worse than anything the range has.
      long worse = all.stream().filter(m -> room < m.ranges().get(figure).low()).count();
      out.printf(
          Locale.ROOT,
          "%-18s %-45s first order %5.1f %%, told %5.1f %%, worse %5.1f %% of %d%n",
          name,
          CheckWords.of(margins.figures().get(f).question()),
          100.0 * held / times,
          100.0 * ranged / times,
          100.0 * worse / times,
          times);
    }
  }

  private static void atTheLimit(Crewed truth, int times, PrintStream out) {
    double room = freeboard(truth);
    long said =
        answers(truth, times).stream()
            .filter(m -> m.rooms().get(0) >= ONE_SIDED * m.spreads().get(0))
            .count();
    out.printf(
        Locale.ROOT,
        "freeboard %.1f mm short of its limit, said to be met in 95 of 100: %.1f %% of %d%n",
        -1000 * room,
        100.0 * said / times,
        times);
  }
}
