package thwartwise.rules;

/**
 * Running motor, controls, dry battery and full portable tank by power: 33 CFR part 183, motor
 * weight table of 2018 (READ), totals in pounds.
 */
final class MotorWeights {
  private static final double HORSEPOWER = 745.7;

  private record Row(double upToHorsepower, double pounds) {}

  private static final Row[] TABLE = {
    new Row(2.0, 32), new Row(3.9, 44), new Row(6.9, 94), new Row(10.9, 185), new Row(22.9, 234)
  };
  private static final double LARGEST = 350;
  private static final double MOST_HORSEPOWER = 34.9;

  private MotorWeights() {}

  /** Whether the table as noted reaches this motor; heavier ones would come out too light. */
  static boolean covers(double power) {
    return power / HORSEPOWER <= MOST_HORSEPOWER;
  }

  /** kg for a motor of so many watts that the table covers. */
  static double total(double power) {
    double horsepower = power / HORSEPOWER;
    for (Row row : TABLE) {
      // The table leaves gaps of a tenth between ranges; the heavier neighbour holds there.
      if (horsepower <= row.upToHorsepower()) {
        return row.pounds() * Cfr183.POUND;
      }
    }
    return LARGEST * Cfr183.POUND;
  }
}
