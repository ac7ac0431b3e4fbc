package thwartwise.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.afloat.RightingCurve;
import thwartwise.measure.Rounding;

/** The righting moment against heel, up to where water comes in. */
final class MomentCurve {
  private static final double LEFT = 98;
  private static final double RIGHT = 612;
  private static final double TOP = 48;
  private static final double FOOT = 330;
  private static final double HEIGHT = 396;

  /** The greatest number of lines on an axis. */
  private static final int MOST_LINES = 6;

  /** The part beyond flooding that is shown, as a share of the whole. */
  private static final double BEYOND = 0.16;

  /** A list this small, as a share of the greatest moment, needs no axis below zero. */
  private static final double NEXT_TO_NOTHING = 0.02;

  /** The foot of the picture, with the words about the equilibrium. */
  private static final double LOW = 76;

  /** The number of pieces in which the curve of the people is drawn. */
  private static final int PIECES = 20;

  private final Scene scene;
  private final HeeledScene heeled;
  private final RightingCurve curve;
  private final List<RightingCurve.Point> points;
  private final double mostDegrees;
  private final double least;
  private final double most;

  private MomentCurve(Scene scene, HeeledScene heeled) {
    this.scene = scene;
    this.heeled = heeled;
    this.curve = heeled.curve();
    this.points = points(curve);
    double end = Math.max(1, Math.toDegrees(curve.last().heel()));
    this.mostDegrees = curve.flooding().isPresent() ? end / (1 - BEYOND) : end;
    double[] moments =
        Stream.concat(
                points.stream().map(curve::moment),
                Stream.of(0.0, heeled.peoplesMoment(scene.crew(), 0)))
            .mapToDouble(Double::doubleValue)
            .sorted()
            .toArray();
    this.most = 1.08 * Math.max(moments[moments.length - 1], 1);
    this.least = moments[0] < -NEXT_TO_NOTHING * most ? moments[0] : 0;
  }

  /** Every whole degree, and flooding. */
  private static List<RightingCurve.Point> points(RightingCurve curve) {
    List<RightingCurve.Point> all = new ArrayList<>(curve.points());
    curve.flooding().ifPresent(all::add);
    return all;
  }

  static View of(Scene scene, HeeledScene heeled) {
    return new MomentCurve(scene, heeled).view();
  }

  private PictureFacts facts() {
    return new PictureFacts.Moments(
        scene.aboard(),
        curve.side(),
        curve.moment(curve.greatest()),
        curve.greatest().heel(),
        curve.last().heel(),
        curve.end(),
        heeled.rest().isPresent() ? OptionalDouble.of(heeled.heel()) : OptionalDouble.empty());
  }

  private View view() {
    return new View(facts(), HEIGHT, this::draw);
  }

  private void draw(Canvas canvas) {
    flooding(canvas);
    axes(canvas);
    canvas.path(
        "righting",
        points.stream().map(p -> at(Math.toDegrees(p.heel()), curve.moment(p))).toList(),
        Pen.THICK);
    people(canvas);
    canvas.words("across-word", new Point(RIGHT, HEIGHT - 8), Canvas.Anchor.END, across());
    canvas.words(
        "up-word",
        new Point(8, 26),
        Canvas.Anchor.START,
        "turning moment, " + (scene.units().system().isMetric() ? "N\u00b7m" : "lb\u00b7ft"));
  }

  private String across() {
    return "heel to " + curve.side().word() + ", degrees";
  }

  private Point at(double degrees, double moment) {
    return new Point(
        LEFT + degrees / mostDegrees * (RIGHT - LEFT),
        FOOT - (moment - least) / (most - least) * (FOOT - TOP));
  }

  private void axes(Canvas canvas) {
    double step = step(mostDegrees);
    for (double degrees = 0; degrees <= mostDegrees; degrees += step) {
      Point foot = new Point(at(degrees, 0).x(), FOOT);
      canvas.line("tick", foot, new Point(foot.x(), FOOT + 6), Pen.FINE);
      canvas.small(
          "tick-word", new Point(foot.x(), FOOT + 26), Canvas.Anchor.MIDDLE, whole(degrees));
    }
    double unit = scene.units().momentUnit();
    double rung = unit * step((most - least) / unit);
    for (double moment = Math.ceil(least / rung) * rung; moment <= most; moment += rung) {
      Point left = at(0, moment);
      canvas.line(
          "rung", left, new Point(RIGHT, left.y()), Pen.dashed(0.7, moment == 0 ? "" : "1 4"));
      canvas.small(
          "rung-word", new Point(LEFT - 8, left.y() + 6), Canvas.Anchor.END, whole(moment / unit));
    }
    canvas.strokes(
        "axes",
        List.of(List.of(new Point(LEFT, TOP - 8), new Point(LEFT, FOOT), new Point(RIGHT, FOOT))),
        Pen.PLAIN);
  }

  private static String whole(double value) {
    return Rounding.nearest(value, 0);
  }

  /** The least of 1, 2 and 5 with zeros that gives few enough lines. */
  static double step(double range) {
    double ten = Math.pow(10, Math.floor(Math.log10(range)) - 1);
    for (double step : new double[] {1, 2, 5, 10, 20, 50, 100}) {
      if (range / (step * ten) <= MOST_LINES && step * ten >= 1) {
        return step * ten;
      }
    }
    return Math.max(1, range);
  }

  private void flooding(Canvas canvas) {
    curve
        .flooding()
        .ifPresent(
            point -> {
              double x = at(Math.toDegrees(point.heel()), 0).x();
              List<Point> beyond =
                  List.of(
                      new Point(x, TOP), new Point(RIGHT, TOP),
                      new Point(RIGHT, FOOT), new Point(x, FOOT));
              canvas.hatched("flooded", beyond, Hatching.WATER_COMES_IN);
              canvas.words(
                  "flooded-word",
                  new Point(RIGHT, TOP - 12),
                  Canvas.Anchor.END,
                  "water comes in from "
                      + Rounding.down(Math.toDegrees(point.heel()), 0)
                      + "\u00b0");
            });
  }

  private void people(Canvas canvas) {
    if (scene.crew().isEmpty()) {
      return;
    }
    double end = Math.toDegrees(curve.last().heel());
    List<Point> line =
        IntStream.rangeClosed(0, PIECES)
            .mapToDouble(i -> end * i / PIECES)
            .mapToObj(d -> at(d, heeled.peoplesMoment(scene.crew(), Math.toRadians(d))))
            .toList();
    canvas.path("people", line, Pen.dashed(2.5, "9 6"));
    if (heeled.rest().isPresent()) {
      Point last = line.get(PIECES);
      double down = last.y() > FOOT - LOW ? -12 : 26;
      label(canvas, new Point(last.x() - 6, last.y() + down), Canvas.Anchor.END);
    } else {
      label(canvas, new Point(LEFT + 12, line.get(0).y() + 28), Canvas.Anchor.START);
    }
    heeled.rest().ifPresent(rest -> meets(canvas, heeled.heel()));
  }

  /**
   * The label stands where the two curves part, because near their crossing it would overlap one of
   * them.
   */
  private void label(Canvas canvas, Point at, Canvas.Anchor anchor) {
    canvas.words("people-word", at, anchor, "everyone to one side");
  }

  private void meets(Canvas canvas, double heel) {
    Point meets = at(Math.toDegrees(heel), heeled.peoplesMoment(scene.crew(), heel));
    canvas.line("meets-leader", meets, new Point(meets.x(), FOOT), Pen.FINE);
    canvas.circle("meets", meets, 8, "#fff", Pen.THICK);
    canvas.words(
        "meets-word",
        new Point(meets.x() + 8, FOOT - 10),
        Canvas.Anchor.START,
        "rests at " + degrees(heel));
  }

  private static String degrees(double heel) {
    return Rounding.up(Math.toDegrees(heel), 0) + "\u00b0";
  }
}
