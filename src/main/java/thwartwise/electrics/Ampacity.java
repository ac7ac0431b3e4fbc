package thwartwise.electrics;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The permitted current of a copper wire, by 33 CFR 183.425 table 5 (READ): amperes outside an
 * engine space. A wire between two gauges counts as the thinner; one beyond the table is not
 * assessed.
 */
public final class Ampacity {
  /** The insulation where nobody read it, °C: the weakest of the table. */
  public static final double UNSTATED_INSULATION = 60;

  /** The smallest bundle; two wires in a pipe of their own count as three. */
  private static final int BUNDLE = 4;

  private static final double HAIR = 1 + 1e-9;
  private static final double[] INSULATION = {60, 75, 80, 90, 105, 125, 200};
  private static final Map<Integer, double[]> AMPERES =
      new TreeMap<>(
          Map.of(
              18, new double[] {10, 10, 15, 20, 20, 25, 25},
              16, new double[] {15, 15, 20, 25, 25, 30, 35},
              14, new double[] {20, 20, 25, 30, 35, 40, 45},
              12, new double[] {25, 25, 35, 40, 45, 50, 55},
              10, new double[] {40, 40, 50, 55, 60, 70, 70},
              8, new double[] {55, 65, 70, 70, 80, 90, 100},
              6, new double[] {80, 95, 100, 100, 120, 125, 135},
              4, new double[] {105, 125, 130, 135, 160, 170, 180},
              2, new double[] {140, 170, 175, 180, 210, 225, 240}));

  private Ampacity() {}

  /** The current in open air, A; empty for a wire thinner than the thinnest of the table. */
  public static OptionalDouble ofArea(double area, double insulation) {
    for (Map.Entry<Integer, double[]> row : AMPERES.entrySet()) {
      if (area * HAIR >= WireSize.ofGauge(row.getKey())) {
        return OptionalDouble.of(row.getValue()[column(insulation)]);
      }
    }
    return OptionalDouble.empty();
  }

  /** The least copper of the table for a current in open air, m²; NaN when none is enough. */
  public static double areaFor(double current, double insulation) {
    double least = Double.NaN;
    for (Map.Entry<Integer, double[]> row : AMPERES.entrySet()) {
      if (row.getValue()[column(insulation)] * HAIR >= current) {
        least = WireSize.ofGauge(row.getKey());
      }
    }
    return least;
  }

  /**
   * The share of it for wires in a pipe or bundle, which warm each other: 0.7 for up to three of
   * them, 0.6 for four to six, 0.5 up to 24, 0.4 beyond (trade practice, FROM MEMORY).
   */
  public static double together(int wires) {
    if (wires < BUNDLE) {
      return 0.7;
    }
    return wires <= 6 ? 0.6 : wires <= 24 ? 0.5 : 0.4;
  }

  /**
   * The number of wires that lie together, for a number of circuits of two wires each.
   *
   * @param piped whether in a pipe, which one circuit may have to itself; a bundle holds others
   */
  static int wires(int circuits, boolean piped) {
    return piped ? 2 * circuits : Math.max(BUNDLE, 2 * circuits);
  }

  private static int column(double insulation) {
    int column = 0;
    while (column + 1 < INSULATION.length && INSULATION[column + 1] <= insulation) {
      column++;
    }
    return column;
  }
}
