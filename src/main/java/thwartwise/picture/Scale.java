package thwartwise.picture;

import java.util.List;
import thwartwise.measure.UnitFormat;

/**
 * The conversion from metres, to the right and up, to the units of a picture, the same in both
 * directions.
 *
 * @param perMetre units for a metre
 * @param left position of zero metres to the right
 * @param foot position of zero metres up
 */
record Scale(double perMetre, double left, double foot) {

  private static final double FOOT = 0.3048;

  Point at(double right, double up) {
    return new Point(left + right * perMetre, foot - up * perMetre);
  }

  List<Point> all(List<Point> metres) {
    return metres.stream().map(p -> at(p.x(), p.y())).toList();
  }

  /**
   * A bar of a metre or a yard, or half a metre or a foot where a whole would not fit next to the
   * rest.
   */
  void bar(Canvas canvas, Point start, double metres, UnitFormat units) {
    double length = units.system().isMetric() ? metres : metres == 1 ? 3 * FOOT : FOOT;
    double end = start.x() + length * perMetre;
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
        units.tape(length).replace('\u00a0', ' '));
  }
}
