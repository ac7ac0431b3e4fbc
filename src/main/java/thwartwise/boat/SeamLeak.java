package thwartwise.boat;

/**
 * Water that came in through one seam while the boat lay at its mooring.
 *
 * @param seam where it came in
 * @param volume m³
 * @param time in which it came, s
 */
public record SeamLeak(String seam, double volume, double time) {
  /** m³/s */
  public double rate() {
    return volume / time;
  }
}
