package thwartwise.hull;

/**
 * The height of the centre of a bare hull from two balances on one narrow edge. Level it balances
 * where the edge is below its centre; with the edge moved along it balances tilted, and its centre
 * stands over the edge again. By moments about the edge, {@code tan tilt = (balance − edge) /
 * (centre − bottom)} (DERIVED; that a body balances with its centre over its support is textbook
 * statics).
 *
 * @param balance where it balances level, forward of the aft end, m
 * @param edge where the edge was moved to, forward of the aft end, m
 * @param bottom height of the bottom there, m
 * @param tilt at which it balances then, radians, more than zero and less than a right angle
 */
public record TrestleBalance(double balance, double edge, double bottom, double tilt) {

  /** The height of the centre above the baseline, m. */
  public double centreHeight() {
    return bottom + Math.abs(balance - edge) / Math.tan(tilt);
  }
}
