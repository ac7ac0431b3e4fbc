package thwartwise.measure;

/** What kind of quantity is asked for. */
public enum Dimension {
  /** Metres inside. */
  LENGTH("length"),
  /** Kilograms inside. */
  MASS("mass"),
  /** Cubic metres inside. */
  VOLUME("volume"),
  /** Watts inside. */
  POWER("power"),
  /** Seconds inside. */
  TIME("time");

  private final String word;

  Dimension(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
