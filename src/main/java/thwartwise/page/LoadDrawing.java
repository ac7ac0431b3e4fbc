package thwartwise.page;

import java.util.Locale;
import thwartwise.measure.UnitFormat.Side;

/**
 * The drawing of the load bar. Each part has its own tone and hatching, so that it can be told
 * apart without colour. The figures stand in the text around it, where they can be large.
 */
public final class LoadDrawing {
  private static final double WIDTH = 640;
  private static final int HEIGHT = 40;

  private LoadDrawing() {}

  static String of(LoadBar bar) {
    return "<figure class=\"load\"><div role=\"img\" aria-label=\""
        + Markup.bare(alternative(bar))
        + "\">"
        + drawn(bar)
        + "</div><figcaption>"
        + key(bar)
        + "</figcaption></figure>";
  }

  private static String alternative(LoadBar bar) {
    return "Bar up to "
        + bar.endShown()
        + ": kit "
        + bar.units().mass(bar.kit(), Side.UP)
        + ", people aboard today "
        + bar.units().mass(bar.people(), Side.UP)
        + ", limit "
        + bar.units().mass(bar.limit(), Side.DOWN);
  }

  private static String drawn(LoadBar bar) {
    double kit = Math.min(bar.kit(), bar.limit());
    double used = Math.min(bar.used(), bar.limit());
    return svg(WIDTH, HEIGHT)
        + Fill.LEFT.part(0, bar.end(), bar)
        + Fill.KIT.part(0, kit, bar)
        + Fill.PEOPLE.part(kit, used, bar)
        + Fill.TOO_MUCH.part(bar.limit(), bar.end(), bar)
        + limit(bar)
        + "</svg>";
  }

  private static String svg(double width, int height) {
    return format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%d\""
            + " viewBox=\"0 0 %.0f %d\">",
        width, height, width, height);
  }

  private static String limit(LoadBar bar) {
    double at = Math.max(3, Math.min(WIDTH - 3, x(bar.limit(), bar)));
    return format(
        "<path d=\"M%.1f 0V%d\" stroke=\"#000\" stroke-width=\"6\" fill=\"none\"/>", at, HEIGHT);
  }

  private static double x(double mass, LoadBar bar) {
    return bar.end() > 0 ? mass / bar.end() * WIDTH : 0;
  }

  private static String key(LoadBar bar) {
    return Fill.KIT.key("kit")
        + Fill.PEOPLE.key("people aboard today")
        + (bar.isTooMuch() ? Fill.TOO_MUCH.key("too much") : Fill.LEFT.key("left"))
        + "<span>"
        + Markup.of(
            "The thick stroke is the limit, "
                + bar.units().mass(bar.limit(), Side.DOWN)
                + (bar.isTooMuch() ? "; the bar ends at " + bar.endShown() : "")
                + ".")
        + "</span>";
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }

  /** The filling of one part of the bar: a background and strokes at a distance. */
  private enum Fill {
    LEFT("#fff", 0, false),
    KIT("#555", 0, false),
    PEOPLE("#ddd", 12, false),
    TOO_MUCH("#fff", 7, true);

    private static final int MARGIN = 4;
    private static final int SWATCH = 22;

    private final String ground;
    private final int spacing;
    private final boolean crossed;

    Fill(String ground, int spacing, boolean crossed) {
      this.ground = ground;
      this.spacing = spacing;
      this.crossed = crossed;
    }

    String part(double from, double to, LoadBar bar) {
      double start = x(from, bar);
      double width = x(to, bar) - start;
      return width > 0 ? box(start, width, MARGIN, HEIGHT - 2 * MARGIN) : "";
    }

    String key(String word) {
      return "<span class=\"key\">"
          + svg(SWATCH, SWATCH)
          + box(1, SWATCH - 2, 1, SWATCH - 2)
          + "</svg> "
          + Markup.of(word)
          + "</span> ";
    }

    private String box(double x, double width, int y, int height) {
      return format(
          "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" fill=\"%s\" stroke=\"#000\"/>"
              + "<path d=\"%s\" stroke=\"#000\" stroke-width=\"1.6\" fill=\"none\"/>",
          x, y, width, height, ground, strokes(x, width, y, height));
    }

    /** Slanting strokes, clipped to the box here because some printers omit patterns. */
    private String strokes(double x, double width, int y, int height) {
      StringBuilder path = new StringBuilder("M0 0");
      for (double at = x - height + spacing; spacing > 0 && at < x + width; at += spacing) {
        double left = Math.max(x, at);
        double right = Math.min(x + width, at + height);
        if (right > left) {
          path.append(stroke(left, y + height - (left - at), right, y + height - (right - at)));
          path.append(crossed ? stroke(left, y + (left - at), right, y + (right - at)) : "");
        }
      }
      return path.toString();
    }

    private static String stroke(double x1, double y1, double x2, double y2) {
      return format("M%.1f %.1fL%.1f %.1f", x1, y1, x2, y2);
    }
  }
}
