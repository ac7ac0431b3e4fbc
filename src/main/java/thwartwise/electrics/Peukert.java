package thwartwise.electrics;

/**
 * How long a battery lasts at a steady current, by Peukert's law in its two forms. They agree only
 * where the label's time is an hour at one ampere; a label of 20 hours wants the rated form.
 */
public final class Peukert {
  private Peukert() {}

  /**
   * {@code T = R (C / (I R))^n}: the form for a charge C that is drawn in the rated time R.
   *
   * @return s; not cut at the label
   */
  public static double rated(double charge, double ratedTime, double exponent, double current) {
    return ratedTime * Math.pow(charge / (current * ratedTime), exponent);
  }

  /**
   * {@code T = C / I^n} in hours and ampere-hours: the form for a charge found at one ampere. Of a
   * charge rated over 20 hours it says too little; kept for comparing with published examples.
   *
   * @return s
   */
  public static double oneAmpere(double charge, double exponent, double current) {
    return charge / Math.pow(current, exponent);
  }

  /** The rated form, never giving more charge than the label: a slow draw adds nothing. */
  public static double withinLabel(
      double charge, double ratedTime, double exponent, double current) {
    return Math.min(charge / current, rated(charge, ratedTime, exponent, current));
  }
}
