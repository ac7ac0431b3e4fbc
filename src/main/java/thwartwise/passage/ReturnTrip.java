package thwartwise.passage;

/**
 * A trip out and back against wind and current. The worst direction counts: out with the current,
 * home against current and wind. A following wind adds nothing.
 *
 * @param outwardSpeed speed over the ground on the way out, m/s
 * @param homewardSpeed speed over the ground on the way home, m/s; zero or less when it is carried
 *     away
 * @param turnAfter s
 * @param distance from the start where it turns, m
 */
public record ReturnTrip(
    double outwardSpeed, double homewardSpeed, double turnAfter, double distance) {
  /** The share of the running time kept in reserve (common practice, no source). */
  public static final double IN_HAND = 1.0 / 3;

  /**
   * The loss of speed for each metre a second of headwind (judgement; time a run against the wind).
   * Two people sitting up and the bow catch about 1.25 m² of wind at a coefficient of 1.3, and such
   * a hull resists with some 23 N at 1 m/s: a boat of 2 knots then loses 0.14 in a wind of 4 m/s,
   * one of 1.5 m/s loses 0.10 (DERIVED from these guesses).
   */
  public static final double WIND_LOSS = 0.15;

  /**
   * The greatest headwind in multiples of a boat's own speed (judgement): by the same guesses it
   * stands still at 4.9 times.
   */
  public static final double MOST_WIND = 4;

  /** The least speed over the ground that counts as getting home, m/s (judgement). */
  public static final double LEAST_HOME = 0.2;

  /**
   * The trip.
   *
   * @param time the battery lasts, s
   * @param speed through the water, m/s
   */
  public static ReturnTrip of(double time, double speed, double wind, double stream) {
    double out = speed + stream;
    double home = homewardSpeed(speed, wind, stream);
    if (!(home >= LEAST_HOME)) {
      return new ReturnTrip(out, home, 0, 0);
    }
    double turn = time * (1 - IN_HAND) * home / (out + home);
    return new ReturnTrip(out, home, turn, out * turn);
  }

  /**
   * The speed over the ground against wind and current, m/s; zero in a wind too strong for the
   * speed.
   */
  static double homewardSpeed(double speed, double wind, double stream) {
    return wind > MOST_WIND * speed ? 0 : speed - stream - WIND_LOSS * wind;
  }

  /** Whether it gets home at all. */
  public boolean getsHome() {
    return homewardSpeed >= LEAST_HOME;
  }
}
