package thwartwise.walk.questions;

/** How thick a shell is, m: in most boats the same everywhere. */
record ShellThickness(double bottom, double sides) {
  static ShellThickness everywhere(double thickness) {
    return new ShellThickness(thickness, thickness);
  }

  /** It leaves less room in the chambers, so it counts there. */
  double thicker() {
    return Math.max(bottom, sides);
  }

  /** What is certain to be skin all over the hull. */
  double thinner() {
    return Math.min(bottom, sides);
  }
}
