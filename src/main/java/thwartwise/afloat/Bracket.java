package thwartwise.afloat;

/**
 * Two arguments between which a function changes from not negative to negative. They are moved
 * together by the secant through both ends, and by halving wherever that does not halve them in two
 * steps.
 *
 * <p>The secant alone approaches from one side; so the next argument is set a little beyond it,
 * toward the end that moved less lately.
 */
final class Bracket {
  private double low;
  private double atLow;
  private double high;
  private double atHigh;
  private double twoAgo = Double.POSITIVE_INFINITY;
  private double oneAgo = Double.POSITIVE_INFINITY;
  private boolean lowMoved;

  /**
   * @param atLow the function at the lower argument, not negative
   * @param atHigh at the higher one, negative, or not a number where there is none
   */
  Bracket(double low, double atLow, double high, double atHigh) {
    this.low = low;
    this.atLow = atLow;
    this.high = high;
    this.atHigh = atHigh;
  }

  double width() {
    return high - low;
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  /**
   * An argument to try between both ends.
   *
   * @param tolerance the final width of the bracket
   */
  double next(double tolerance) {
    double middle = low + (high - low) / 2;
    if (!(atLow > atHigh) || !(width() <= twoAgo / 2)) {
      return middle;
    }
    double secant = low + (high - low) * atLow / (atLow - atHigh);
    double step = Math.max(tolerance / 3, width() / 100);
    double beyond = secant + (lowMoved ? step : -step);
    double margin = Math.min(tolerance / 3, width() / 4);
    return Math.max(low + margin, Math.min(high - margin, beyond));
  }

  /**
   * Takes the function's value at an argument between both ends.
   *
   * @param value not a number counts as negative
   * @return whether it replaces the lower end
   */
  boolean cut(double at, double value) {
    twoAgo = oneAgo;
    oneAgo = width();
    lowMoved = value >= 0;
    if (lowMoved) {
      low = at;
      atLow = value;
    } else {
      high = at;
      atHigh = value;
    }
    return lowMoved;
  }
}
