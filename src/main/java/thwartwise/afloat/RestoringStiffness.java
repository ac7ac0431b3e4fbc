package thwartwise.afloat;

/**
 * The symmetric 2 × 2 matrix of restoring stiffness in heel and trim with sinkage eliminated, over
 * ρg, m⁴: second moments of the waterplane about its own centre, less those of loose water inside,
 * less volume times the height of G above B.
 */
public record RestoringStiffness(double heel, double trim, double product) {

  /** The lesser eigenvalue. */
  public double softest() {
    return middle() - spread();
  }

  /** The greater eigenvalue. */
  public double stiffest() {
    return middle() + spread();
  }

  /** Stiffness in heel with trim free. */
  public double heelTrimFree() {
    return trim > 0 ? heel - product * product / trim : heel;
  }

  /** Stiffness in trim with heel free. */
  double trimHeelFree() {
    return heel > 0 ? trim - product * product / heel : trim;
  }

  /** The same with port for starboard. */
  RestoringStiffness mirrored() {
    return new RestoringStiffness(heel, trim, -product);
  }

  /** A copy with another stiffness added, times a factor. */
  RestoringStiffness plus(RestoringStiffness other, double factor) {
    return new RestoringStiffness(
        heel + factor * other.heel, trim + factor * other.trim, product + factor * other.product);
  }

  double middle() {
    return (heel + trim) / 2;
  }

  double spread() {
    double half = (heel - trim) / 2;
    return Math.sqrt(half * half + product * product);
  }
}
