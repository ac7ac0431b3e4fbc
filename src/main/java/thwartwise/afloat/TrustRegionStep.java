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
record TrustRegionStep(double heel, double trim, double expectedDrop) {
  private static final double ON_RIM = 1e-13;
  private static final int MOST_SHIFTS = 60;

  static TrustRegionStep downhill(HydrostaticState at, double radius) {
    RestoringStiffness k = at.restoring;
    double shift = Math.max(0, -k.softest() + 1e-12 * Math.abs(k.stiffest()));
    TrustRegionStep newton = solve(at, shift);
    if (shift == 0 && newton.size() <= radius) {
      return newton;
    }
    return onRim(at, shift, radius);
  }

  // Newton on the reciprocal of the turn's size, which is nearly straight over the shift; halving
  // wherever that leaves the bounds.
  private static TrustRegionStep onRim(HydrostaticState at, double least, double radius) {
    double low = least;
    double high = least + at.moment() / radius + Math.abs(at.restoring.stiffest());
    double shift = least;
    for (int i = 0; i < MOST_SHIFTS; i++) {
      TrustRegionStep turn = solve(at, shift);
      double longer = turn.size() / radius - 1;
      if (Math.abs(longer) <= ON_RIM || shift == least && longer < 0) {
        return turn;
      }
      if (longer > 0) {
        low = shift;
      } else {
        high = shift;
      }
      double newton = shift + longer * turn.stiffnessAlong(at, shift);
      shift = newton > low && newton < high ? newton : (low + high) / 2;
    }
    return solve(at, high);
  }

  /** The harmonic mean of the shifted stiffness over this turn: what Newton's step is scaled by. */
  private double stiffnessAlong(HydrostaticState at, double shift) {
    double a = at.restoring.heel() + shift;
    double b = at.restoring.product();
    double c = at.restoring.trim() + shift;
    double determinant = a * c - b * b;
    double soft = c * heel * heel - 2 * b * heel * trim + a * trim * trim;
    return (heel * heel + trim * trim) * determinant / soft;
  }

  private static TrustRegionStep solve(HydrostaticState at, double shift) {
    double a = at.restoring.heel() + shift;
    double b = at.restoring.product();
    double c = at.restoring.trim() + shift;
    double determinant = a * c - b * b;
    double heel = -(c * at.heelMoment - b * at.trimMoment) / determinant;
    double trim = -(a * at.trimMoment - b * at.heelMoment) / determinant;
    return new TrustRegionStep(heel, trim, drop(at, heel, trim));
  }

  private static double drop(HydrostaticState at, double heel, double trim) {
    RestoringStiffness k = at.restoring;
    double slope = at.heelMoment * heel + at.trimMoment * trim;
    double bend =
        0.5 * (k.heel() * heel * heel + k.trim() * trim * trim) + k.product() * heel * trim;
    return -(slope + bend);
  }

  double size() {
    return Math.sqrt(heel * heel + trim * trim);
  }
}
