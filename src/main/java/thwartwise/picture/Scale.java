package thwartwise.picture;

import java.util.List;

/**
 * From metres, to the right and up, to the units of a picture, the same in both directions.
 *
 * @param perMetre units for a metre
 * @param left where zero metres to the right lie
 * @param foot where zero metres up lie
 */
record Scale(double perMetre, double left, double foot) {

  Point at(double right, double up) {
    return new Point(left + right * perMetre, foot - up * perMetre);
  }

  List<Point> all(List<Point> metres) {
    return metres.stream().map(p -> at(p.x(), p.y())).toList();
  }

  /** A metre laid out, or half of one where a whole would not fit beside the rest. */
  void bar(Canvas canvas, Point start, double metres) {
    double end = start.x() + metres * perMetre;
    double tick = 6;
    canvas.strokes(
        "metre-bar",
        List.of(
            List.of(start, new Point(end, start.y())),
            List.of(new Point(start.x(), start.y() - tick), new Point(start.x(), start.y() + tick)),
            List.of(new Point(end, start.y() - tick), new Point(end, start.y() + tick))),
        Pen.PLAIN);
    canvas.small(
        "metre-word",
        new Point(end + 8, start.y() + 6),
        Canvas.Anchor.START,
        metres == 1 ? "1 m" : "0.5 m");
  }
}
