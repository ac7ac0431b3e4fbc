package thwartwise.boat;

/** How a measurement was taken. */
public enum MeasuringWay {
  STEEL_TAPE("steel tape", "steel-tape-on-a-flat-side", false),
  TAUT_LINE("taut line", "steel-tape-from-a-taut-line", false),
  CURVED_TAPE("tape round a curve", "tape-round-a-curve", false),
  BATHROOM_SCALES("bathroom scales", "bathroom-scales", true),
  LUGGAGE_SCALE("luggage scale", "luggage-scale", true),
  JUG("jug", "jug", true),
  CALLIPERS("callipers", "callipers", true),
  ROLLER("roller", "balanced-on-a-roller", false),
  INCLINED("inclined afloat", "inclined-afloat", false),
  OFFCUT("soaked offcut", "soaked-offcut", true),
  /** Off by so many times what is taken where nobody said how. */
  USUAL_VALUE("usual value", "usual-value", true),
  GUESS("guess", "guess", true);

  private final String word;
  private final String limit;
  private final boolean relative;

  MeasuringWay(String word, String limit, boolean relative) {
    this.word = word;
    this.limit = limit;
    this.relative = relative;
  }

  /** As boat files have it and people type it. */
  public String word() {
    return word;
  }

  /** The name, among the limits, of one standard deviation of a single reading. */
  public String limit() {
    return limit;
  }

  /** Whether that is a share of the value. */
  public boolean isRelative() {
    return relative;
  }

  /** Whether nothing was measured: it is off by some times what is taken where nobody said how. */
  public boolean isGuessed() {
    return this == USUAL_VALUE || this == GUESS;
  }
}
