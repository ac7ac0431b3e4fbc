package thwartwise.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import thwartwise.geometry.Solid;

/**
 * Runs all benchmarks a few rounds over, one process each, and prints the ratios with their goals.
 * A ratio is formed from medians (or processor times) within one round; shown are the middle one of
 * the rounds and the least and greatest.
 */
public final class Ratios {
  private static final int ROUNDS = 3;

  private Ratios() {}

  /**
   * @param args how many rounds; three where it is left out
   */
  public static void main(String[] args) throws RunnerException {
    List<Round> rounds = new ArrayList<>();
    int count = args.length > 0 ? Integer.parseInt(args[0]) : ROUNDS;
    for (int i = 0; i < count; i++) {
      rounds.add(round());
    }
    System.out.println("Ratios within one run: middle of the rounds (least to greatest), goal");
    int triangles = SampleBoat.outside().triangleCount();
    for (int heel : new int[] {10, 30, 60}) {
      String what = "immersed part / bare pass, " + triangles + " triangles, heel " + heel;
      print(what + ", medians", Spread.of(rounds, r -> r.immersedOverBare(heel, 50)), "at most 2");
      print(what + ", fastest", Spread.of(rounds, r -> r.immersedOverBare(heel, 0)), "at most 2");
    }
    int sections = SectionedHull.of(LoadedPunt.outside(), LoadedPunt.PIECES).count();
    print(
        sections + " sections and solver / one equilibrium",
        Spread.of(rounds, Round::sectionsOverOurs),
        "at least 500");
    for (String how : List.of("withAdvice", "withoutAdvice")) {
      print(
          "demo boat inspected " + how + ", warm, seconds by the clock",
          Spread.of(rounds, r -> r.inspected(how)),
          "");
    }
    print(
        "demo boat with the spread of every finding / inspected plainly",
        Spread.of(rounds, r -> r.inspected("judged") / r.inspected("withoutAdvice")),
        "at most 80");
    for (String who : List.of("adults", "young")) {
      print(
          "eight people on eight places, " + who + ", seconds by the clock",
          Spread.of(rounds, r -> r.seated(who)),
          "at most 1");
    }
    print(
        "growth of an immersed part, exponent over triangles",
        Spread.of(rounds, r -> r.growth(n -> (double) hull(n).triangleCount())),
        "at most 1.05");
    print(
        "growth of an immersed part, exponent over stations",
        Spread.of(rounds, r -> r.growth(n -> n)),
        "at most 1.05");
    SearchesCounted.print();
  }

  private static Solid hull(double stations) {
    return RoundHull.of((int) stations);
  }

  private static Round round() throws RunnerException {
    List<RunResult> results = new ArrayList<>();
    results.addAll(new Runner(brief("Immersion|Growth").build()).run());
    results.addAll(new Runner(longer("Equilibrium|Seats|Inspection").build()).run());
    return new Round(results);
  }

  private static ChainedOptionsBuilder brief(String which) {
    return common(which)
        .warmupIterations(3)
        .warmupTime(TimeValue.milliseconds(300))
        .measurementIterations(4)
        .measurementTime(TimeValue.milliseconds(250));
  }

  // A solver over polygons is a lot of code: it takes seconds until all of it is compiled.
  private static ChainedOptionsBuilder longer(String which) {
    return common(which)
        .warmupIterations(1)
        .warmupTime(TimeValue.seconds(5))
        .measurementIterations(2)
        .measurementTime(TimeValue.seconds(1));
  }

  private static ChainedOptionsBuilder common(String which) {
    return new OptionsBuilder()
        .include("thwartwise\\.benchmark\\.(" + which + ")Benchmark\\..*")
        .forks(1)
        .verbosity(VerboseMode.SILENT);
  }

  private static void print(String what, Spread ratio, String goal) {
    System.out.println(
        String.format(
            Locale.ROOT,
            "%-68s %6.2f (%.2f to %.2f)  %s",
            what,
            ratio.middle(),
            ratio.least(),
            ratio.greatest(),
            goal));
  }
}
