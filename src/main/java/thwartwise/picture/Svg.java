package thwartwise.picture;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A picture in the making, 640 units wide. On a small telephone it is shown at half its size, so no
 * lettering is smaller than {@link #SMALL}.
 *
 * <p>The first word of every method is the kind of thing drawn; it becomes the element's class.
 */
final class Svg {
  static final double WIDTH = 640;
  static final double LETTERS = 20;
  static final double SMALL = 18;

  /** Width of a letter on average, in parts of its size; no usual typeface is wider. */
  private static final double LETTER_WIDTH = 0.58;

  private static final double MARGIN = 4;

  private final double height;
  private final StringBuilder drawn = new StringBuilder();

  Svg(double height) {
    this.height = height;
  }

  /** Where lettering stands to its point. */
  enum Anchor {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double before;

    Anchor(double before) {
      this.before = before;
    }

    private String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  Svg line(String kind, Point from, Point to, Pen pen) {
    return path(kind, List.of(from, to), "none", pen);
  }

  Svg path(String kind, List<Point> points, String fill, Pen pen) {
    return element(kind, "M" + joined(points), fill, pen.attributes());
  }

  Svg polygon(String kind, List<Point> points, String fill, Pen pen) {
    return element(kind, "M" + joined(points) + "Z", fill, pen.attributes());
  }

  /** An area without an edge. */
  Svg area(String kind, List<Point> points, String fill) {
    return element(kind, "M" + joined(points) + "Z", fill, "");
  }

  private Svg element(String kind, String path, String fill, String stroke) {
    drawn.append(
        String.format(
            Locale.ROOT,
            "<path class=\"%s\" d=\"%s\" fill=\"%s\"%s stroke-linejoin=\"round\"/>\n",
            kind,
            path,
            fill,
            stroke));
    return this;
  }

  /** Strokes that need not hang together. */
  Svg strokes(String kind, List<List<Point>> strokes, Pen pen) {
    String path = strokes.stream().map(s -> "M" + joined(s)).collect(Collectors.joining());
    return path.isEmpty() ? this : element(kind, path, "none", pen.attributes());
  }

  Svg circle(String kind, Point at, double radius, String fill, Pen pen) {
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
    return this;
  }

  Svg square(String kind, Point middle, double half, String fill) {
    return polygon(
        kind,
        List.of(
            new Point(middle.x() - half, middle.y() - half),
            new Point(middle.x() + half, middle.y() - half),
            new Point(middle.x() + half, middle.y() + half),
            new Point(middle.x() - half, middle.y() + half)),
        fill,
        Pen.FINE);
  }

  Svg words(String kind, Point at, Anchor anchor, String words) {
    return words(kind, at, anchor, LETTERS, words);
  }

  /** Small lettering, for axes and scales. */
  Svg small(String kind, Point at, Anchor anchor, String words) {
    return words(kind, at, anchor, SMALL, words);
  }

  /** Lettering moved as little as keeps it within the picture. */
  private Svg words(String kind, Point at, Anchor anchor, double size, String words) {
    double width = width(words, size);
    double least = MARGIN + anchor.before * width;
    double most = WIDTH - MARGIN - (1 - anchor.before) * width;
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
            anchor.word(),
            escaped(words)));
    return this;
  }

  static double width(String words, double size) {
    return words.codePointCount(0, words.length()) * size * LETTER_WIDTH;
  }

  private static String escaped(String words) {
    return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static String joined(List<Point> points) {
    return points.stream()
        .map(p -> String.format(Locale.ROOT, "%.2f %.2f", p.x(), p.y()))
        .collect(Collectors.joining("L"));
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
