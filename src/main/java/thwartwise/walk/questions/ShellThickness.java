package thwartwise.walk.questions;

/** The thickness of a shell, m; most boats have one thickness everywhere. */
record ShellThickness(double bottom, double sides) {
  static ShellThickness everywhere(double thickness) {
    return new ShellThickness(thickness, thickness);
  }

  /** The larger thickness, which leaves less room in the chambers and counts there. */
  double thicker() {
    return Math.max(bottom, sides);
  }

  /** The thickness that the skin has everywhere at least. */
  double thinner() {
    return Math.min(bottom, sides);
  }
}
