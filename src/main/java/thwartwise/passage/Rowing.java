package thwartwise.passage;

/** Going home without the motor, by oars or by paddles. */
public enum Rowing {
  /** The speed of a tired person in a loaded boat (judgement: 1.5 knots). */
  OARS(0.75),
  /** The same with a paddle, which has no rowlocks (judgement: a knot). */
  PADDLES(0.5);

  private final double speed;

  Rowing(double speed) {
    this.speed = speed;
  }

  /** The speed through the water, m/s. */
  public double speed() {
    return speed;
  }

  /** The time for that way against wind and current, s; infinite when no way is made. */
  public double time(double distance, double wind, double stream) {
    double home = ReturnTrip.homewardSpeed(speed, wind, stream);
    return home >= ReturnTrip.LEAST_HOME ? distance / home : Double.POSITIVE_INFINITY;
  }
}
