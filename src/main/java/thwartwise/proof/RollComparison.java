package thwartwise.proof;

/**
 * The period of a roll compared with the one expected from the metacentric height. A cross-check:
 * it is never in the fit and decides nothing.
 *
 * @param measured one whole swing, s
 * @param least s, two standard deviations below what is expected
 * @param most s, two above
 */
public record RollComparison(double measured, double least, double most) {

  public boolean agrees() {
    return measured >= least && measured <= most;
  }

  /**
   * @param beam m
   * @param spread of the metacentric height, m
   */
  static RollComparison of(
      double measured, double factor, double beam, double metacentricHeight, double spread) {
    double expected = factor * beam / Math.sqrt(metacentricHeight);
    double relative =
        Math.hypot(RollPeriod.FACTOR_SCATTER / factor, spread / (2 * metacentricHeight));
    return new RollComparison(
        measured, expected * Math.max(0, 1 - 2 * relative), expected * (1 + 2 * relative));
  }
}
