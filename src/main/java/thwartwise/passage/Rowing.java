package thwartwise.passage;

/** Home with the motor dead, by oars or by paddles. */
public enum Rowing {
  /** A tired person in a loaded boat (judgement: 1.5 knots). */
  OARS(0.75),
  /** The same with a paddle, and no rowlocks to pull against (judgement: a knot). */
  PADDLES(0.5);

  private final double speed;

  Rowing(double speed) {
    this.speed = speed;
  }

  /** Through the water, m/s. */
  public double speed() {
    return speed;
  }

  /** s for that way against wind and stream; without end when no way is made. */
  public double time(double distance, double wind, double stream) {
    double home = ReturnTrip.homewardSpeed(speed, wind, stream);
    return home >= ReturnTrip.LEAST_HOME ? distance / home : Double.POSITIVE_INFINITY;
  }
}
