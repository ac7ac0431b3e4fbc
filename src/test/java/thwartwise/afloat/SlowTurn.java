package thwartwise.afloat;

/**
 * A small turn that lowers the energy: Newton's where the stiffness is positive and the turn is
 * short enough, otherwise the best one on the rim of the trust region (Moré and Sorensen 1983,
 * exact for two unknowns; from memory).
 *
 * @param heel turn about the fore-and-aft line, rad
 * @param trim turn about the athwart line, rad
 * @param expectedDrop energy the model says it loses, over ρg
 */
record SlowTurn(double heel, double trim, double expectedDrop) {

  static SlowTurn downhill(SlowSettling at, double radius) {
    RestoringStiffness k = at.restoring;
    double shift = Math.max(0, -k.softest() + 1e-12 * Math.abs(k.stiffest()));
    SlowTurn newton = solve(at, shift);
    if (shift == 0 && newton.size() <= radius) {
      return newton;
    }
    return onRim(at, shift, radius);
  }

  private static SlowTurn onRim(SlowSettling at, double least, double radius) {
    double low = least;
    double high = least + at.moment() / radius + Math.abs(at.restoring.stiffest());
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (solve(at, middle).size() > radius) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return solve(at, high);
  }

  private static SlowTurn solve(SlowSettling at, double shift) {
    double a = at.restoring.heel() + shift;
    double b = at.restoring.product();
    double c = at.restoring.trim() + shift;
    double determinant = a * c - b * b;
    double heel = -(c * at.heelMoment - b * at.trimMoment) / determinant;
    double trim = -(a * at.trimMoment - b * at.heelMoment) / determinant;
    return new SlowTurn(heel, trim, drop(at, heel, trim));
  }

  private static double drop(SlowSettling at, double heel, double trim) {
    RestoringStiffness k = at.restoring;
    double slope = at.heelMoment * heel + at.trimMoment * trim;
    double bend =
        0.5 * (k.heel() * heel * heel + k.trim() * trim * trim) + k.product() * heel * trim;
    return -(slope + bend);
  }

  double size() {
    return Math.hypot(heel, trim);
  }
}
