package thwartwise.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import thwartwise.afloat.Pose;
import thwartwise.boat.Body;
import thwartwise.boat.Space;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * The swamped boat with its crew, from its starboard side, in its pose: the water is level, one end
 * may be under.
 */
final class SwampedView {
  private static final double MARGIN = 22;
  private static final double TOP = 16;
  private static final double FOOT = 46;
  private static final double MOST_PER_METRE = 150;

  private final Scene scene;
  private final Pose pose;
  private final WaterPlane plane;
  private final Vector3 ahead;
  private final List<Point> hull;
  private final Scale scale;
  private final double foot;

  /**
   * @param from the beginning, units down
   */
  SwampedView(Scene scene, Pose pose, double from) {
    this.scene = scene;
    this.pose = pose;
    this.plane = pose.plane();
    Vector3 bow = Vector3.of(1, 0, 0);
    this.ahead = bow.minus(plane.up().times(plane.up().dot(bow))).unit();
    this.hull = seen(Silhouette.fromTheSide(scene.model().form().outside()));
    double aft = hull.stream().mapToDouble(Point::x).min().orElseThrow();
    double fore = hull.stream().mapToDouble(Point::x).max().orElseThrow();
    double perMetre = Math.min(MOST_PER_METRE, (Canvas.WIDTH - 2 * MARGIN) / (fore - aft));
    double top =
        DoubleStream.concat(
                hull.stream().mapToDouble(Point::y),
                scene.crew().stream().mapToDouble(b -> seat(b).y() + SeatedFigure.crown()))
            .max()
            .orElseThrow();
    double low = Math.min(-0.1, hull.stream().mapToDouble(Point::y).min().orElseThrow());
    this.scale =
        new Scale(
            perMetre,
            Canvas.WIDTH / 2 - perMetre * (aft + fore) / 2,
            from + TOP + perMetre * Math.max(0.1, top));
    this.foot = scale.at(0, low).y();
  }

  /** Empty where it does not stay upright swamped. */
  static Optional<View> of(Scene scene) {
    return Scene.upright(scene.swamped()).map(pose -> new SwampedView(scene, pose, 0).view());
  }

  private View view() {
    PictureFacts facts = new PictureFacts.FullOfWater(scene.aboard(), pose.heel());
    return new View(
        facts,
        end(),
        canvas -> {
          boat(canvas);
          foot(canvas);
        });
  }

  /** The lower end of the boat and the water. */
  double lowest() {
    return foot + 6;
  }

  double end() {
    return foot + FOOT;
  }

  void boat(Canvas canvas) {
    canvas.area("sea", sea(), "#e4e4e4");
    lifting().forEach(area -> canvas.hatched("chamber-counts", scale.all(area), Hatching.COUNTS));
    scene
        .crew()
        .forEach(body -> SeatedFigure.of(body, scene).fromTheSide(canvas, scale, this::seen));
    canvas.polygon("hull", scale.all(hull), "none", Pen.THICK);
    canvas.line("surface", scaled(MARGIN), scaled(Canvas.WIDTH - MARGIN), Pen.PLAIN);
  }

  void foot(Canvas canvas) {
    scale.bar(canvas, new Point(MARGIN, foot + 28), 1, scene.units());
    canvas.small(
        "bow", new Point(Canvas.WIDTH - MARGIN, foot + 34), Canvas.Anchor.END, "bow \u2192");
  }

  private Point scaled(double x) {
    return new Point(x, scale.foot());
  }

  private List<Point> sea() {
    return List.of(
        scaled(MARGIN),
        scaled(Canvas.WIDTH - MARGIN),
        new Point(Canvas.WIDTH - MARGIN, foot + 6),
        new Point(MARGIN, foot + 6));
  }

  private Stream<List<Point>> lifting() {
    return scene.model().spaces().stream()
        .filter(space -> Hatching.of(space) == Hatching.COUNTS)
        .map(Space::solid)
        .map(solid -> seen(Silhouette.fromTheSide(solid)));
  }

  private Point seat(Body body) {
    return seen(new Point(body.x(), body.seat()));
  }

  private List<Point> seen(List<Point> points) {
    return points.stream().map(this::seen).toList();
  }

  /** A point of the middle plane of the boat: distance forward, and above the water. */
  private Point seen(Point p) {
    Vector3 at = Vector3.of(p.x(), 0, p.y());
    return new Point(ahead.dot(at), plane.above(at));
  }
}
