package thwartwise.passage;

/** Home with the motor dead. */
public final class Rowing {
  /** A tired person in a loaded boat, m/s (judgement: 1.5 knots). */
  public static final double SPEED = 0.75;

  private Rowing() {}

  /** s for that way against wind and stream; without end when no way is made. */
  public static double time(double distance, double wind, double stream) {
    double speed = SPEED - stream - WayHome.WIND_LOSS * wind;
    return speed >= WayHome.LEAST_HOME ? distance / speed : Double.POSITIVE_INFINITY;
  }
}
