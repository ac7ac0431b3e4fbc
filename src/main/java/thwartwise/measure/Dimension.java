package thwartwise.measure;

/** The kind of quantity that is asked for. */
public enum Dimension {
  /** Metres inside the program. */
  LENGTH("length"),
  /** Kilograms inside the program. */
  MASS("mass"),
  /** Cubic metres inside the program. */
  VOLUME("volume"),
  /** Watts inside the program. */
  POWER("power"),
  /** Seconds inside the program. */
  TIME("time");

  private final String word;

  Dimension(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
