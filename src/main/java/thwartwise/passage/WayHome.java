package thwartwise.passage;

/**
 * Out and back against wind and stream. The worst way round counts: out with the stream, home
 * against stream and wind. A wind from behind adds nothing.
 *
 * @param out speed over the ground on the way out, m/s
 * @param home speed over the ground on the way home, m/s; not over zero when it is carried away
 * @param turnAfter s
 * @param distance from the start where it turns, m
 */
public record WayHome(double out, double home, double turnAfter, double distance) {
  /** Share of the running time that is kept in hand (common practice, no source). */
  public static final double IN_HAND = 1.0 / 3;

  /** Speed lost for each metre a second of headwind (judgement; time a run against the wind). */
  public static final double WIND_LOSS = 0.10;

  /** Slower than this over the ground nobody gets home, m/s (judgement). */
  public static final double LEAST_HOME = 0.2;

  /**
   * @param time the battery lasts, s
   * @param speed through the water, m/s
   */
  public static WayHome of(double time, double speed, double wind, double stream) {
    double out = speed + stream;
    double home = speed - stream - WIND_LOSS * wind;
    if (!(home >= LEAST_HOME)) {
      return new WayHome(out, home, 0, 0);
    }
    double turn = time * (1 - IN_HAND) * home / (out + home);
    return new WayHome(out, home, turn, out * turn);
  }

  /** Whether it gets home at all. */
  public boolean getsHome() {
    return home >= LEAST_HOME;
  }
}
