package thwartwise.electrics;

import java.time.Month;

/**
 * Sunshine on a level surface, by the closed form for a day outside the atmosphere: {@code H0 = Isc
 * E0 / π day (cos φ cos δ sin ω + ω sin φ sin δ)} with Cooper's declination (textbooks of solar
 * engineering, FROM MEMORY; their worked examples are the tests).
 */
public final class SolarDay {
  /** W/m² (FAO 56 has 0.0820 MJ/m² a minute, FROM MEMORY). */
  public static final double SOLAR_CONSTANT = 1367;

  /** The share that passes through cloud and air, on average in a dull month (judgement). */
  public static final double CLEARNESS = 0.3;

  /**
   * The share of a panel's rating that the battery delivers in the end (judgement). A plain
   * controller passes the panel's current at the battery's voltage, 12 of some 18 V; dirt and heat
   * take a twentieth, lead-acid keeps a seventh: 0.67 x 0.95 x 0.85 = 0.54.
   */
  public static final double YIELD = 0.5;

  private static final double DAY = 24 * 3600.0;

  /** The irradiance at which a panel gives the watts of its label, W/m². */
  private static final double RATED_SUN = 1000;

  /** The day of the year whose irradiation is the mean of the month (Klein 1977, FROM MEMORY). */
  private static final int[] MEAN_DAY = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};

  private SolarDay() {}

  /** Declination of the sun on a day of the year, rad. */
  public static double declination(int day) {
    return Math.toRadians(23.45) * Math.sin(2 * Math.PI * (284 + day) / 365);
  }

  /**
   * Energy on a level surface outside the atmosphere on a day of the year, J/m².
   *
   * @param latitude rad, south negative
   */
  public static double outsideAir(double latitude, int day) {
    double delta = declination(day);
    double cosine = -Math.tan(latitude) * Math.tan(delta);
    double sunset = Math.acos(Math.max(-1, Math.min(1, cosine)));
    double distance = 1 + 0.033 * Math.cos(2 * Math.PI * day / 365);
    double height =
        Math.cos(latitude) * Math.cos(delta) * Math.sin(sunset)
            + sunset * Math.sin(latitude) * Math.sin(delta);
    return Math.max(0, SOLAR_CONSTANT * distance * DAY / Math.PI * height);
  }

  /** Energy on such a surface on a day of that month, J/m². */
  public static double outsideAir(double latitude, Month month) {
    return outsideAir(latitude, MEAN_DAY[month.ordinal()]);
  }

  /** Energy of a panel lying flat for one day, on average in that month when it is dull, J. */
  public static double energy(double watts, double latitude, Month month) {
    return watts * CLEARNESS * outsideAir(latitude, month) / RATED_SUN * YIELD;
  }
}
