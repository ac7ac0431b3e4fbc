package thwartwise.boat;

/** A method of measuring. */
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
  /** The factor on the spread of an unstated method. */
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

  /** The word in boat files and for typing. */
  public String word() {
    return word;
  }

  /** The name of the limit with the standard deviation of a single reading. */
  public String limit() {
    return limit;
  }

  /** Whether the spread is a share of the value. */
  public boolean isRelative() {
    return relative;
  }

  /** Whether nothing was measured; the spread is then a multiple of that of an unstated method. */
  public boolean isGuessed() {
    return this == USUAL_VALUE || this == GUESS;
  }
}
