package thwartwise.rules;

/**
 * The least lift of a life jacket or buoyancy aid for a person, N, by classes of body mass (EN ISO
 * 12402-5, FROM MEMORY). Whoever is weighed dressed falls into a higher class rather than a lower.
 */
public final class LifeJacket {
  /** Lighter than this no buoyancy aid of 50 N is for them, kg (EN ISO 12402-5:2020, READ). */
  public static final double CHILD = 25;

  /** For those who cannot swim, in sheltered water, N (EN ISO 12402-4, READ). */
  public static final double NON_SWIMMER = 100;

  public static final String SOURCE = "EN ISO 12402, levels READ, classes by mass FROM MEMORY";

  private LifeJacket() {}

  public static double newtons(double mass) {
    if (!(mass >= CHILD)) {
      return NON_SWIMMER;
    }
    return mass < 40 ? 35 : mass < 60 ? 40 : mass <= 70 ? 45 : 50;
  }
}
