package thwartwise.benchmark;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** A figure measured in several rounds. */
record Spread(double least, double middle, double greatest) {
  static Spread of(List<Round> rounds, ToDoubleFunction<Round> figure) {
    double[] sorted = rounds.stream().mapToDouble(figure).sorted().toArray();
    return new Spread(sorted[0], sorted[sorted.length / 2], sorted[sorted.length - 1]);
  }
}
