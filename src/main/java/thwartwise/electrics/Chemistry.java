package thwartwise.electrics;

/**
 * The chemistry of a battery, as far as running time depends on it. Exponents: lead-acid 1.1 to 1.3
 * (READ, several), of which the wet one has the upper end; no source separates AGM and gel, so both
 * have that of the one lead-acid battery with two published points, 1.231 (DERIVED), rounded up;
 * lithium 1.05 (FROM MEMORY). Usable shares: half of lead-acid, four fifths of lithium (READ,
 * several).
 */
public enum Chemistry {
  FLOODED("flooded lead-acid", 1.30, 0.5, true),
  AGM("AGM", 1.25, 0.5, true),
  GEL("gel", 1.25, 0.5, true),
  LIFEPO4("LiFePO4", 1.05, 0.8, false),
  LITHIUM_ION("lithium-ion", 1.05, 0.8, false);

  private final String word;
  private final double exponent;
  private final double usableShare;
  private final boolean lead;

  Chemistry(String word, double exponent, double usableShare, boolean lead) {
    this.word = word;
    this.exponent = exponent;
    this.usableShare = usableShare;
    this.lead = lead;
  }

  public String word() {
    return word;
  }

  /** Peukert's exponent where the maker gives none. */
  public double exponent() {
    return exponent;
  }

  /** The share of the charge that may be used. */
  public double usableShare() {
    return usableShare;
  }

  public boolean isLead() {
    return lead;
  }

  /**
   * The share of a new battery's charge that is left after a number of years (judgement); zero from
   * {@link UsableCharge#MOST_YEARS} on, because nobody can tell which old batteries still hold
   * their charge.
   */
  double agedShare(double years) {
    return years >= UsableCharge.MOST_YEARS ? 0 : 1 - (lead ? 0.08 : 0.03) * years;
  }

  /**
   * The share of the charge at 25 °C that remains in the cold: one hundredth less for each degree
   * for lead-acid, half of that for lithium (FROM MEMORY); never more than the label.
   */
  double coldShare(double celsius) {
    double below = Math.max(0, 25 - celsius);
    return lead ? Math.max(0.4, 1 - 0.010 * below) : Math.max(0.6, 1 - 0.005 * below);
  }
}
