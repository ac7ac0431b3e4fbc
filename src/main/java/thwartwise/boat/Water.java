package thwartwise.boat;

/**
 * The water the boat floats in, with its density in kg/m³ (design values; no temperature given).
 */
public enum Water {
  FRESH("fresh", 1000),
  SALT("salt", 1025);

  private final String word;
  private final double density;

  Water(String word, double density) {
    this.word = word;
    this.density = density;
  }

  public String word() {
    return word;
  }

  public double density() {
    return density;
  }
}
