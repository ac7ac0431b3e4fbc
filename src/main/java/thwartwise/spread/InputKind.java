package thwartwise.spread;

/** What kind of measurement it is, and the better way to take it again. */
public enum InputKind {
  HULL_MASS("bathroom-scales", true),
  KIT_MASS("luggage-scale", true),
  PERSON_MASS("bathroom-scales", true),
  /** Of everything that was weighed. */
  SCALES("", false),
  HULL_CENTRE_ALONG("balanced-on-a-roller", false),
  HULL_CENTRE_HEIGHT("inclined-afloat", false),
  HALF_BREADTHS("steel-tape-on-a-flat-side", false),
  /** Of every breadth of the hull. */
  TAPE("", false),
  BOTTOM_HEIGHTS("steel-tape-from-a-taut-line", false),
  /** Of the edges over the bottom, which one datum decides. */
  EDGE_HEIGHTS("steel-tape-from-a-taut-line", false),
  SHELL_THICKNESS("callipers", true),
  SWAMPED_DENSITY("soaked-offcut", true),
  CHAMBER_VOLUME("jug", true),
  SEAT_HEIGHT("steel-tape-on-a-flat-side", false);

  private final String betterWay;
  private final boolean relative;

  InputKind(String betterWay, boolean relative) {
    this.betterWay = betterWay;
    this.relative = relative;
  }

  /** The name of its spread among the measuring spreads; empty where there is no better way. */
  String betterWay() {
    return betterWay;
  }

  /** Whether that spread is a share of the value. */
  boolean isRelative() {
    return relative;
  }

  /** Whether one reading may be plainly wrong; scales and tape are off by little and for all. */
  public boolean mayBeWrong() {
    return this != SCALES && this != TAPE;
  }
}
