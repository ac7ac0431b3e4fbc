package thwartwise.boat;

import thwartwise.geometry.Box;

/** A side of the boat, looking forward; the sign is that of heel to this side. */
public enum Side {
  STARBOARD("starboard", 1),
  PORT("port", -1);

  private final String word;
  private final double sign;

  Side(String word, double sign) {
    this.word = word;
    this.sign = sign;
  }

  /** The side on which most of a box lies. */
  static Side of(Box box) {
    return box.y().from() + box.y().to() < 0 ? STARBOARD : PORT;
  }

  public String word() {
    return word;
  }

  public double sign() {
    return sign;
  }

  /** The opposite side. */
  public Side other() {
    return this == PORT ? STARBOARD : PORT;
  }
}
