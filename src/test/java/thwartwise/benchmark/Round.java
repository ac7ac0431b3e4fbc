package thwartwise.benchmark;

import java.util.Collection;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.openjdk.jmh.results.RunResult;

/** Every benchmark run once, in one process each. */
final class Round {
  private final Collection<RunResult> results;

  Round(Collection<RunResult> results) {
    this.results = results;
  }

  /**
   * @param percent of the samples that are faster: 50 for medians, 0 for the fastest one
   */
  double immersedOverBare(int heel, double percent) {
    return sample("ImmersionBenchmark.immersedPart", "heelDeg", "" + heel, percent)
        / sample("ImmersionBenchmark.barePass", "heelDeg", "" + heel, percent);
  }

  double sectionsOverOurs() {
    return spent("EquilibriumBenchmark.sectionsAndSolver") / spent("EquilibriumBenchmark.ours");
  }

  /** Seconds by the clock for eight people and eight places, the median. */
  double seated(String who) {
    return clock("SeatsBenchmark." + who);
  }

  /** Seconds by the clock for one inspection of the demo boat, the median. */
  double inspected(String how) {
    return clock("InspectionBenchmark." + how);
  }

  private double clock(String benchmark) {
    return results.stream()
        .filter(r -> r.getParams().getBenchmark().endsWith(benchmark))
        .mapToDouble(r -> r.getPrimaryResult().getStatistics().getPercentile(50))
        .findFirst()
        .orElseThrow();
  }

  /** Slope of the straight line of least squares through log(time) over log(size). */
  double growth(DoubleUnaryOperator size) {
    List<String> stations =
        results.stream()
            .filter(r -> r.getParams().getBenchmark().contains("GrowthBenchmark"))
            .map(r -> r.getParams().getParam("stations"))
            .toList();
    double n = stations.size();
    double sumX = 0;
    double sumY = 0;
    double sumXX = 0;
    double sumXY = 0;
    for (String count : stations) {
      double x = Math.log(size.applyAsDouble(Double.parseDouble(count)));
      double y = Math.log(sample("GrowthBenchmark.immersedPart", "stations", count, 50));
      sumX += x;
      sumY += y;
      sumXX += x * x;
      sumXY += x * y;
    }
    return (n * sumXY - sumX * sumY) / (n * sumXX - sumX * sumX);
  }

  private double sample(String benchmark, String key, String value, double percent) {
    return results.stream()
        .filter(r -> r.getParams().getBenchmark().endsWith(benchmark))
        .filter(r -> r.getParams().getParam(key).equals(value))
        .mapToDouble(r -> r.getPrimaryResult().getStatistics().getPercentile(percent))
        .findFirst()
        .orElseThrow();
  }

  /** Processor time of one go. */
  private double spent(String benchmark) {
    return results.stream()
        .filter(r -> r.getParams().getBenchmark().endsWith(benchmark))
        .mapToDouble(Round::spent)
        .findFirst()
        .orElseThrow();
  }

  private static double spent(RunResult result) {
    return result.getSecondaryResults().get("nanos").getScore()
        / result.getSecondaryResults().get("times").getScore();
  }
}
