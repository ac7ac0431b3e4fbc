package thwartwise.uncertainty;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.geometry.Reference;
import thwartwise.uncertainty.Distribution.Normal;
import thwartwise.uncertainty.Distribution.Rectangular;

/** Published examples, worked by the very classes that serve the boat. */
class PublishedExamplesTest {
  private static final int DRAWS = 1_000_000;
  private static final long SEED = 20080901;

  /** So small that a quotient of differences is a slope, as the published answers are. */
  private static final double SLOPE = 1e-3;

  private record Example(Reference row, List<Distribution> inputs, MeasurementModel model) {
    @Override
    public String toString() {
      return row.toString();
    }
  }

  /** All that decides the draws: several rows hold other digits of the same example. */
  private record Simulation(String kind, Map<String, Double> inputs) {}

  private static final Map<Simulation, SampledResult> SIMULATED = new HashMap<>();

  static Stream<Example> all() {
    return Stream.of(
            rows("sum-of-normal", r -> example(r, normals(r), PublishedExamplesTest::sum)),
            rows("sum-of-rectangular", r -> example(r, rectangles(r), PublishedExamplesTest::sum)),
            rows("logarithm", r -> example(r, between(r, ""), x -> Math.log(x[0]))),
            rows("viscometer", PublishedExamplesTest::viscometer),
            rows("end-gauge", PublishedExamplesTest::endGauge),
            rows("mass-calibration", PublishedExamplesTest::massCalibration),
            rows("one-standard", PublishedExamplesTest::oneStandard))
        .flatMap(s -> s);
  }

  @ParameterizedTest
  @MethodSource("all")
  void first_order_gives_the_published_uncertainty(Example example) {
    PropagatedResult first = FirstOrderPropagation.of(example.inputs, example.model, SLOPE).get(0);
    check(example.row, "best", first.best());
    check(example.row, "first", first.standardUncertainty());
  }

  @ParameterizedTest
  @MethodSource("all")
  void simulation_gives_the_published_distribution(Example example) {
    SampledResult drawn =
        SIMULATED.computeIfAbsent(
            new Simulation(example.row.kind(), example.row.inputs()),
            simulation ->
                MonteCarloPropagation.of(example.inputs, example.model, DRAWS, SEED).get(0));
    check(example.row, "mean", drawn.mean());
    check(example.row, "u", drawn.standardDeviation());
    CoverageInterval ninetyFive =
        example.row.in("shortest", 0) == 1
            ? drawn.shortestInterval(0.95)
            : drawn.symmetricInterval(0.95);
    check(example.row, "low", ninetyFive.low());
    check(example.row, "high", ninetyFive.high());
  }

  private static void check(Reference row, String name, double found) {
    if (row.wants(name)) {
      assertThat(found).as(row + ": " + name).isCloseTo(row.wanted(name), within(row.near(name)));
    }
  }

  private static Stream<Example> rows(String kind, Function<Reference, Example> example) {
    return Reference.of(kind).map(example);
  }

  private interface OneResult {
    double of(double[] x);
  }

  private static Example example(Reference row, List<Distribution> inputs, OneResult model) {
    return new Example(row, inputs, x -> new double[] {model.of(x)});
  }

  private static double sum(double[] x) {
    double sum = 0;
    for (double each : x) {
      sum += each;
    }
    return sum;
  }

  private static List<Distribution> normals(Reference row) {
    return IntStream.rangeClosed(1, 4)
        .<Distribution>mapToObj(i -> new Normal(0, row.in("u" + i)))
        .toList();
  }

  private static List<Distribution> rectangles(Reference row) {
    return IntStream.rangeClosed(1, 4)
        .<Distribution>mapToObj(i -> Rectangular.about(0, Math.sqrt(3) * row.in("u" + i)))
        .toList();
  }

  private static List<Distribution> between(Reference row, String what) {
    return what.isEmpty()
        ? List.of(new Rectangular(row.in("low"), row.in("high")))
        : List.of(new Rectangular(row.in(what + "Low"), row.in(what + "High")));
  }

  /** Viscosity of the second liquid by the times a ball takes to fall. */
  private static Example viscometer(Reference row) {
    return example(
        row,
        List.of(
            new Normal(row.in("muC"), row.in("uMuC")),
            new Normal(row.in("tM"), row.in("uTM")),
            new Normal(row.in("rhoM"), row.in("uRhoM")),
            new Normal(row.in("rhoC"), row.in("uRhoC")),
            new Normal(row.in("tC"), row.in("uTC")),
            new Normal(row.in("rhoB"), row.in("uRhoB"))),
        x -> x[0] * x[1] * (x[5] - x[2]) / (x[4] * (x[5] - x[3])));
  }

  /** Length of a gauge compared with a standard, both out of their temperature. */
  private static Example endGauge(Reference row) {
    return example(
        row,
        List.of(
            new Normal(row.in("ls"), row.in("uLs")),
            new Normal(row.in("d"), row.in("uD")),
            new Normal(0, row.in("uDa")),
            new Normal(row.in("th"), row.in("uTh")),
            new Normal(row.in("as"), row.in("uAs")),
            new Normal(0, row.in("uDt"))),
        x -> x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]));
  }

  /** How far a weight is off its name, compared in air with a reference weight. */
  private static Example massCalibration(Reference row) {
    List<Distribution> inputs = new ArrayList<>();
    inputs.add(new Normal(row.in("mRc"), row.in("uMRc")));
    inputs.add(new Normal(row.in("dm"), row.in("uDm")));
    inputs.addAll(between(row, "air"));
    inputs.addAll(between(row, "w"));
    inputs.addAll(between(row, "r"));
    return example(
        row,
        inputs,
        x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - row.in("mRc"));
  }

  /** Ten resistances that are off by the same share share one input. */
  private static Example oneStandard(Reference row) {
    double each = row.in("each");
    return example(
        row, List.of(new Normal(1, row.in("u") / each)), x -> sum(tenTimes(each * x[0])));
  }

  private static double[] tenTimes(double value) {
    return IntStream.range(0, 10).mapToDouble(i -> value).toArray();
  }
}
