package thwartwise.uncertainty;

/** The interval that holds a stated part of a distribution. */
public record CoverageInterval(double low, double high) {

  public double length() {
    return high - low;
  }

  /** From the lower of both lows to the higher of both highs. */
  public CoverageInterval with(CoverageInterval other) {
    return new CoverageInterval(Math.min(low, other.low), Math.max(high, other.high));
  }

  public boolean contains(double value) {
    return low <= value && value <= high;
  }
}
