package thwartwise.rules;

import java.util.List;

/**
 * The weights that go with a motor of a given power: 33 CFR part 183, motor weight table of 2018
 * (READ). The table is in pounds, the answers are kilograms.
 *
 * @param running with oil and what it needs to run
 * @param swamped under water
 * @param batterySwamped battery under water
 */
public record MotorWeights(
    double upToHorsepower,
    double running,
    double swamped,
    double controls,
    double batteryDry,
    double batterySwamped,
    double tank) {

  private static final List<MotorWeights> TABLE =
      List.of(
          pounds(2.0, 32, 27, 0, 0, 0, 0),
          pounds(3.9, 44, 37, 0, 0, 0, 0),
          pounds(6.9, 69, 59, 0, 0, 0, 25),
          pounds(10.9, 110, 94, 5, 20, 11, 50),
          pounds(22.9, 133, 113, 6, 45, 25, 50),
          pounds(34.9, 196, 167, 9, 45, 25, 100));

  private static MotorWeights pounds(
      double upTo,
      double running,
      double swamped,
      double controls,
      double batteryDry,
      double batterySwamped,
      double tank) {
    double lb = Cfr183.POUND;
    return new MotorWeights(
        upTo,
        running * lb,
        swamped * lb,
        controls * lb,
        batteryDry * lb,
        batterySwamped * lb,
        tank * lb);
  }

  /** Whether the table covers this motor; a stronger motor would come out too light. */
  static boolean covers(double power) {
    return power / Cfr183.HORSEPOWER <= TABLE.get(TABLE.size() - 1).upToHorsepower;
  }

  /** Why a rule that uses the table gives no number for a stronger motor. */
  static FormulaNote beyond() {
    return new FormulaNote.BeyondMotorTable(TABLE.get(TABLE.size() - 1).upToHorsepower);
  }

  /**
   * The row for a motor of so many watts; in the gaps of a tenth of a horsepower between its ranges
   * the heavier row applies.
   *
   * @throws IllegalArgumentException beyond the table
   */
  static MotorWeights of(double power) {
    return TABLE.stream()
        .filter(row -> power / Cfr183.HORSEPOWER <= row.upToHorsepower)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("The table does not reach " + power));
  }

  /**
   * The weight to assume where only the power is known: running motor, controls, battery and full
   * portable tank, kg. Beyond the table its last row, which is then too light.
   *
   * @param power W
   */
  public static double equippedMass(double power) {
    return (covers(power) ? of(power) : TABLE.get(TABLE.size() - 1)).total();
  }

  /** Running motor, controls, dry battery and full portable tank, kg. */
  double total() {
    return running + controls + batteryDry + tank;
  }
}
