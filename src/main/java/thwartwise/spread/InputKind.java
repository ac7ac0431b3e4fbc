package thwartwise.spread;

/** What kind of measurement it is, and the better way to take it again. */
public enum InputKind {
  HULL_MASS("bathroom-scales", true, "slip-of-a-weight"),
  KIT_MASS("luggage-scale", true, "slip-of-a-weight"),
  PERSON_MASS("bathroom-scales", true, "slip-of-a-weight"),
  /** Of everything that was weighed. */
  SCALES("", false, "slip-of-a-share"),
  HULL_CENTRE_ALONG("balanced-on-a-roller", false, "slip-of-a-place"),
  HULL_CENTRE_HEIGHT("inclined-afloat", false, "slip-of-a-place"),
  HALF_BREADTHS("steel-tape-on-a-flat-side", false, "slip-of-a-breadth"),
  /** Of every breadth of the hull. */
  TAPE("", false, "slip-of-a-share"),
  BOTTOM_HEIGHTS("steel-tape-from-a-taut-line", false, "slip-of-a-height"),
  /** Of the edges over the bottom, which one datum decides. */
  EDGE_HEIGHTS("steel-tape-from-a-taut-line", false, "slip-of-a-height"),
  SHELL_THICKNESS("callipers", true, "slip-of-a-height"),
  SWAMPED_DENSITY("soaked-offcut", true, "slip-of-a-share"),
  CHAMBER_VOLUME("jug", true, "slip-of-a-share"),
  SEAT_HEIGHT("steel-tape-on-a-flat-side", false, "slip-of-a-height"),
  /** Where somebody sat along the boat while it was proved afloat. */
  PERSON_ALONG("", false, "slip-of-a-place"),
  /** The same across it. */
  PERSON_ACROSS("", false, "slip-of-a-place"),
  /** The weight moved across to prove it. */
  MOVED_WEIGHT("", false, "slip-of-a-weight"),
  /** One height of the rail above the water, read to prove it. */
  FREEBOARD_READ("", false, "slip-of-a-height"),
  /** One heel read by a plumb line or a level, to prove it. */
  HEEL_READ("", false, "slip-of-an-angle"),
  /** Of every heel read by one of these: where it hung or stood before. */
  HEEL_ZERO("", false, "slip-of-an-angle");

  private final String betterWay;
  private final boolean relative;
  private final String slip;

  InputKind(String betterWay, boolean relative, String slip) {
    this.betterWay = betterWay;
    this.relative = relative;
    this.slip = slip;
  }

  /** The name, among the measuring spreads, of how far a plain slip puts it off. */
  public String slip() {
    return slip;
  }

  /** The name of its spread among the measuring spreads; empty where there is no better way. */
  String betterWay() {
    return betterWay;
  }

  public boolean hasBetterWay() {
    return !betterWay.isEmpty();
  }

  /** Whether that spread is a share of the value. */
  boolean isRelative() {
    return relative;
  }

  /**
   * Whether one reading may be plainly wrong; scales, tape and level are off by little and for all.
   */
  public boolean mayBeWrong() {
    return this != SCALES && this != TAPE && this != HEEL_ZERO;
  }
}
