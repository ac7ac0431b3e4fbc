package thwartwise.proof;

import thwartwise.afloat.Gravity;

/**
 * The time of a whole roll, out and back to both sides: T = 2 pi k/sqrt(g GM), the same for every
 * swing of up to about ten degrees (references A23). How the mass is spread, k, is only guessed by
 * the breadth: k = f B sqrt(g)/(2 pi), from GM = (f B/T)² of IMO Res. A.749(18), annex 3, with an f
 * that scatters by 0.05 either way (references A14). So it is a cross-check and proves nothing.
 */
public final class RollPeriod {
  /** The scatter of the factor. */
  public static final double FACTOR_SCATTER = 0.05;

  private RollPeriod() {}

  /**
   * @param radius of gyration about the axis of roll, m
   * @param metacentricHeight m
   * @return s; NaN where the boat does not come back
   */
  public static double of(double radius, double metacentricHeight) {
    return metacentricHeight > 0
        ? 2 * Math.PI * radius / Math.sqrt(Gravity.STANDARD * metacentricHeight)
        : Double.NaN;
  }

  /**
   * @param factor f, s/sqrt(m)
   * @param breadth m
   * @param period of a whole roll, s
   */
  public static double metacentricHeight(double factor, double breadth, double period) {
    double root = factor * breadth / period;
    return root * root;
  }

  /** The factor for a radius of gyration in breadths, s/sqrt(m). */
  public static double factor(double radiusOverBreadth) {
    return 2 * Math.PI * radiusOverBreadth / Math.sqrt(Gravity.STANDARD);
  }
}
