package thwartwise.report;

/** The text wherever a number stands: what the number does not mean, and who decides. */
public final class Disclaimer {
  public static final String NO_PLATE =
      "A recommendation, not a capacity plate and not a builder's plate";
  public static final String LAST_WORD =
      "Local rules come first, and whoever is in charge of the water has the last word";

  private Disclaimer() {}
}
