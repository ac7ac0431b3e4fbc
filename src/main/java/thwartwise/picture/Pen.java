package thwartwise.picture;

/**
 * How a line is drawn: told apart by width and dashes, never by colour.
 *
 * @param dash lengths of strokes and gaps; blank for one that is not broken
 */
record Pen(double width, String dash) {
  static final Pen FINE = new Pen(1.2, "");
  static final Pen PLAIN = new Pen(2, "");
  static final Pen THICK = new Pen(3.5, "");
  static final Pen DOTTED = new Pen(2.5, "2 5");

  static Pen dashed(double width, String dash) {
    return new Pen(width, dash);
  }

  boolean isBroken() {
    return !dash.isEmpty();
  }

  boolean isDotted() {
    return equals(DOTTED);
  }

  String attributes() {
    return " stroke=\"#000\" stroke-width=\""
        + width
        + "\""
        + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"");
  }
}
