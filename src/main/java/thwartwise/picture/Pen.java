package thwartwise.picture;

/**
 * The style of a line, distinguished by width and dashes and never by colour.
 *
 * @param dash lengths of strokes and gaps; blank for a solid line
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
