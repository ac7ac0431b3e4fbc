package thwartwise.rules;

/**
 * The least lift of a life jacket or buoyancy aid for a person, N, by classes of body mass (EN ISO
 * 12402-5, FROM MEMORY). Dressed weight may put a person into a higher class, never a lower one.
 */
public final class LifeJacket {
  /**
   * A buoyancy aid of 50 N is not for anybody lighter than this, kg (EN ISO 12402-5:2020, READ).
   */
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
