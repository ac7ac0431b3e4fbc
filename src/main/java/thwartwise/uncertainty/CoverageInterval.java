package thwartwise.uncertainty;

/** From where to where a stated part of a distribution lies. */
public record CoverageInterval(double low, double high) {

  public double length() {
    return high - low;
  }

  public boolean contains(double value) {
    return low <= value && value <= high;
  }
}
