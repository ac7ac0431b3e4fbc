package thwartwise.afloat;

/** Standard acceleration of gravity, m/s² (3rd CGPM 1901; exact by definition). */
public final class Gravity {
  public static final double STANDARD = 9.80665;

  private Gravity() {}
}
