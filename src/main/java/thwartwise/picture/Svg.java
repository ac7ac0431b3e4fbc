package thwartwise.picture;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import thwartwise.page.Hundredths;

/**
 * A picture as SVG. On a small telephone it is shown at half its size, so no lettering is smaller
 * than {@link #SMALL}. The kind of thing drawn becomes the element's class.
 */
final class Svg implements Canvas {
  static final double LETTERS = 24;
  static final double SMALL = 22;
  private static final double MARK = 6;

  /** The average width of a letter, as a share of its size; no usual typeface is wider. */
  private static final double LETTER_WIDTH = 0.58;

  private static final double MARGIN = 4;

  private final double height;
  private final StringBuilder drawn = new StringBuilder();

  Svg(double height) {
    this.height = height;
  }

  @Override
  public void path(String kind, List<Point> points, Pen pen) {
    element(kind, "M" + joined(points), "none", pen.attributes());
  }

  @Override
  public void polygon(String kind, List<Point> points, String fill, Pen pen) {
    element(kind, "M" + joined(points) + "Z", fill, pen.attributes());
  }

  @Override
  public void area(String kind, List<Point> points, String fill) {
    element(kind, "M" + joined(points) + "Z", fill, "");
  }

  @Override
  public void hatched(String kind, List<Point> area, Hatching hatching) {
    polygon(kind, area, hatching.ground(), Pen.PLAIN);
    strokes(kind + "-hatching", hatching.strokes(area), Pen.FINE);
  }

  @Override
  public void strokes(String kind, List<List<Point>> strokes, Pen pen) {
    String path = strokes.stream().map(s -> "M" + joined(s)).collect(Collectors.joining());
    if (!path.isEmpty()) {
      element(kind, path, "none", pen.attributes());
    }
  }

  private void element(String kind, String path, String fill, String stroke) {
    drawn.append(
        String.format(
            Locale.ROOT,
            "<path class=\"%s\" d=\"%s\" fill=\"%s\"%s stroke-linejoin=\"round\"/>\n",
            kind,
            path,
            fill,
            stroke));
  }

  @Override
  public void circle(String kind, Point at, double radius, String fill, Pen pen) {
    drawn.append(
        String.format(
            Locale.ROOT,
            "<circle class=\"%s\" cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"%s\"%s/>\n",
            kind,
            at.x(),
            at.y(),
            radius,
            fill,
            pen.attributes()));
  }

  @Override
  public void mark(String kind, Point middle) {
    polygon(
        kind,
        List.of(
            new Point(middle.x() - MARK, middle.y() - MARK),
            new Point(middle.x() + MARK, middle.y() - MARK),
            new Point(middle.x() + MARK, middle.y() + MARK),
            new Point(middle.x() - MARK, middle.y() + MARK)),
        "#000",
        Pen.FINE);
  }

  @Override
  public void words(String kind, Point at, Anchor anchor, String words) {
    words(kind, at, anchor, LETTERS, words);
  }

  @Override
  public void small(String kind, Point at, Anchor anchor, String words) {
    words(kind, at, anchor, SMALL, words);
  }

  /** Lettering moved just enough to stay within the picture. */
  private void words(String kind, Point at, Anchor anchor, double size, String words) {
    double width = width(words, size);
    double least = MARGIN + anchor.before() * width;
    double most = WIDTH - MARGIN - (1 - anchor.before()) * width;
    double x = Math.max(least, Math.min(most, at.x()));
    double y = Math.max(size, Math.min(height - MARGIN, at.y()));
    drawn.append(
        String.format(
            Locale.ROOT,
            "<text class=\"%s\" x=\"%.1f\" y=\"%.1f\" font-size=\"%.0f\" text-anchor=\"%s\">%s"
                + "</text>\n",
            kind,
            x,
            y,
            size,
            anchor.name().toLowerCase(Locale.ROOT),
            escaped(words)));
  }

  static double width(String words, double size) {
    return words.codePointCount(0, words.length()) * size * LETTER_WIDTH;
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static String joined(List<Point> points) {
    StringBuilder joined = new StringBuilder();
    for (Point point : points) {
      Hundredths.append(point.x(), joined.append(joined.isEmpty() ? "" : "L"));
      Hundredths.append(point.y(), joined.append(' '));
    }
    return joined.toString();
  }

  String whole() {
    return String.format(
        Locale.ROOT,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\""
            + " viewBox=\"0 0 %.0f %.0f\" font-family=\"sans-serif\" fill=\"#000\">\n%s</svg>",
        WIDTH,
        height,
        WIDTH,
        height,
        drawn);
  }
}
