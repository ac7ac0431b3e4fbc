package thwartwise.page;

import java.util.Locale;

/**
 * A range with its middle against a limit. The good side is to the right, and the limit is at a
 * third of the length of every bar, so that bars below each other can be compared: a bar that
 * reaches over the limit to the left may fall short. It is drawn in black and grey, each part in a
 * form of its own.
 *
 * @param low end of the range, over the limit, in any unit; negative when short of it
 * @param middle over the limit
 * @param high end of the range, over the limit
 * @param words the same for a reader who cannot see it
 */
public record RangeBar(double low, double middle, double high, String words) {
  private static final double LIMIT = 1.0 / 3;
  private static final int WIDTH = 36;
  private static final int HEIGHT = 10;

  /** The position of a value over the limit, 0 to 1. */
  private double at(double over) {
    double least = Math.min(low, middle);
    double most = Math.max(high, middle);
    double whole = Math.max(most / (1 - LIMIT), -least / LIMIT);
    return whole > 0 ? Math.max(0, Math.min(1, LIMIT + over / whole)) : LIMIT;
  }

  /** The bar as text, " |=o==": the range, its middle and the limit. */
  String text(int width) {
    StringBuilder drawn = new StringBuilder(" ".repeat(width));
    for (int i = column(low, width); i <= column(high, width); i++) {
      drawn.setCharAt(i, '=');
    }
    drawn.setCharAt(column(0, width), '|');
    drawn.setCharAt(column(middle, width), 'o');
    return drawn.toString();
  }

  private int column(double over, int width) {
    return (int) Math.min(width - 1, Math.floor(at(over) * width));
  }

  String svg() {
    double from = 2 + at(low) * (WIDTH - 4);
    double to = 2 + at(high) * (WIDTH - 4);
    return "<span class=\"range\" role=\"img\" aria-label=\""
        + Markup.bare(words)
        + "\">"
        + format(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$d\" height=\"%2$d\""
                + " viewBox=\"0 0 %1$d %2$d\">",
            WIDTH, HEIGHT)
        + format("<path d=\"M0 5H%d\" stroke=\"#000\" stroke-width=\"0.6\"/>", WIDTH)
        + format(
            "<rect x=\"%.1f\" y=\"2.5\" width=\"%.1f\" height=\"5\" fill=\"#bbb\" stroke=\"#000\"/>",
            from, Math.max(1, to - from))
        + stroke(0, 3)
        + stroke(middle, 1.2)
        + "</svg></span>";
  }

  private String stroke(double over, double width) {
    double x = Math.max(2, Math.min(WIDTH - 2, 2 + at(over) * (WIDTH - 4)));
    return format(
        "<path d=\"M%.1f 1V%d\" stroke=\"#000\" stroke-width=\"%.1f\"/>", x, HEIGHT - 1, width);
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
