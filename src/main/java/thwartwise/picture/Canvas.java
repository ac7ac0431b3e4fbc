package thwartwise.picture;

import java.util.List;

/**
 * A surface for pictures: {@link #WIDTH} units wide, x to the right and y down. The first argument
 * of every method is the kind of thing drawn.
 */
interface Canvas {
  double WIDTH = 640;

  /** The position of lettering relative to its point. */
  enum Anchor {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double before;

    Anchor(double before) {
      this.before = before;
    }

    /** The share of the lettering to the left of its point. */
    double before() {
      return before;
    }
  }

  void path(String kind, List<Point> points, Pen pen);

  void polygon(String kind, List<Point> points, String fill, Pen pen);

  /** An area without an edge. */
  void area(String kind, List<Point> points, String fill);

  /** An area with hatching and an edge, distinguishable in black and white. */
  void hatched(String kind, List<Point> area, Hatching hatching);

  /** Lines that need not be connected. */
  void strokes(String kind, List<List<Point>> strokes, Pen pen);

  void circle(String kind, Point at, double radius, String fill, Pen pen);

  /** A mark of one size, for a thing and not for an area. */
  void mark(String kind, Point middle);

  void words(String kind, Point at, Anchor anchor, String words);

  /** Small lettering, for axes, scales and keys. */
  void small(String kind, Point at, Anchor anchor, String words);

  default void line(String kind, Point from, Point to, Pen pen) {
    path(kind, List.of(from, to), pen);
  }
}
