package thwartwise.hull;

/**
 * The material of the hull: the density that counts when it is swamped, kg/m³, and the usual
 * thickness in small boats, metres. Both are judgement; soaked wood lifts less than dry (published
 * dry range of marine plywood 430 to 750).
 */
public enum Material {
  PLYWOOD("plywood", 750, 0.006),
  SOFTWOOD("softwood", 700, 0.012),
  GRP("GRP", 1600, 0.004),
  ALUMINIUM("aluminium", 2700, 0.002);

  private static final double THICK = 2;
  private static final double MICROMETRE = 1e-6;

  private final String word;
  private final double swampedDensity;
  private final double usualThickness;

  Material(String word, double swampedDensity, double usualThickness) {
    this.word = word;
    this.swampedDensity = swampedDensity;
    this.usualThickness = usualThickness;
  }

  public String word() {
    return word;
  }

  public double swampedDensity() {
    return swampedDensity;
  }

  public double usualThickness() {
    return usualThickness;
  }

  /** The thickness assumed for an unmeasured shell: thick, so that chambers are small; metres. */
  public double unmeasuredThickness() {
    return THICK * usualThickness;
  }

  /** Whether a thickness is the one assumed for an unmeasured shell. */
  public boolean isUnmeasured(double thickness) {
    return Math.abs(thickness - unmeasuredThickness()) < MICROMETRE;
  }
}
