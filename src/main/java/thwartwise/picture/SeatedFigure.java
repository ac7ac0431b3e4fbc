package thwartwise.picture;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import thwartwise.boat.Body;

/**
 * The drawing of a person that shows how they sit. Sizes are those of an adult (judgement; only
 * drawn, nothing is computed from them).
 *
 * @param ahead 1 for somebody who looks to the bow, -1 for somebody who looks aft
 */
record SeatedFigure(Body body, double ahead) {
  private static final double HEAD = 0.10;
  private static final double CHEST = 0.13;
  private static final double SHOULDER = 0.24;
  private static final double NECK = 0.61;
  private static final double CROWN = 0.84;
  private static final double THIGH = 0.42;

  /** People kneel or stretch out on a seat this low above the floor. */
  private static final double LOW = 0.12;

  /** A person who looks to the middle of the boat, where there is room for the legs. */
  static SeatedFigure of(Body body, Scene scene) {
    return new SeatedFigure(body, body.x() > scene.model().form().length() / 2 ? -1 : 1);
  }

  /** The highest point, above the seat, m. */
  static double crown() {
    return CROWN;
  }

  /** From above, bow to the right. */
  void fromAbove(Canvas canvas, Scale scale) {
    canvas.polygon("shoulders", scale.all(shoulders()), "#fff", Pen.PLAIN);
    canvas.circle(
        "person",
        scale.at(body.x(), body.y()),
        Math.max(8, HEAD * scale.perMetre()),
        "#fff",
        Pen.THICK);
  }

  private List<Point> shoulders() {
    return IntStream.range(0, 16)
        .mapToDouble(i -> 2 * Math.PI * i / 16)
        .mapToObj(a -> new Point(body.x() + CHEST * Math.cos(a), body.y() + SHOULDER * Math.sin(a)))
        .toList();
  }

  /**
   * From the starboard side, the trunk upright.
   *
   * @param lie where a point of the boat is in the picture, metres to the right and up
   */
  void fromTheSide(Canvas canvas, Scale scale, UnaryOperator<Point> lie) {
    Point seat = lie.apply(new Point(body.x(), body.seat()));
    canvas.strokes("legs", List.of(scale.all(legs(seat, lie))), Pen.THICK);
    canvas.polygon("trunk", scale.all(trunk(seat)), "#fff", Pen.PLAIN);
    canvas.circle(
        "person",
        scale.at(seat.x(), seat.y() + CROWN - HEAD),
        HEAD * scale.perMetre(),
        "#fff",
        Pen.PLAIN);
  }

  private List<Point> legs(Point seat, UnaryOperator<Point> lie) {
    Point hip = new Point(seat.x(), seat.y() + 0.07);
    Point knee = new Point(seat.x() + ahead * THIGH, seat.y() + 0.07);
    return body.seat() - body.floor() < LOW
        ? List.of(hip, knee)
        : List.of(hip, knee, lie.apply(new Point(body.x() + ahead * THIGH, body.floor())));
  }

  private static List<Point> trunk(Point seat) {
    return List.of(
        new Point(seat.x() - CHEST, seat.y()),
        new Point(seat.x() + CHEST, seat.y()),
        new Point(seat.x() + CHEST, seat.y() + NECK),
        new Point(seat.x() - CHEST, seat.y() + NECK));
  }
}
