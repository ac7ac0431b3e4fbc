package thwartwise.report;

/** What stands wherever a number stands: what it is not, and who has the last word. */
public final class Disclaimer {
  public static final String NO_PLATE =
      "A recommendation, not a capacity plate and not a builder's plate";
  public static final String LAST_WORD =
      "Local rules come first, and whoever is in charge of the water has the last word";

  private Disclaimer() {}
}
