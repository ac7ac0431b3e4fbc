package thwartwise.afloat;

/** Which way a boat heels; the sign is that of heel to this side. */
public enum Side {
  STARBOARD("starboard", 1),
  PORT("port", -1);

  private final String word;
  private final double sign;

  Side(String word, double sign) {
    this.word = word;
    this.sign = sign;
  }

  public String word() {
    return word;
  }

  public double sign() {
    return sign;
  }
}
