package thwartwise.picture;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;

/**
 * The boat cut across at its lowest edge, seen from aft, heeled: weight at G, lift at B, and the
 * arm between them that rights it.
 */
final class SectionView {
  private static final double MARGIN = 92;
  private static final double TOP = 28;
  private static final double FOOT = 46;
  private static final double TALLEST = 360;
  private static final double DOT = 6;
  private static final double DISC = 0.13;

  private final Scene scene;
  private final BoatModel model;
  private final HeeledScene heeled;
  private final WaterPlane plane;
  private final FloodPoint lowest;
  private final double x;
  private final Vector3 weight;
  private final Vector3 lift;
  private final List<List<Vector3>> hull;
  private final Scale scale;
  private final double foot;

  private SectionView(Scene scene, HeeledScene heeled) {
    this.scene = scene;
    this.model = scene.model();
    this.heeled = heeled;
    this.plane = heeled.plane();
    this.lowest = heeled.lowestEdge(model);
    this.x = within(model.form().outside(), lowest.at().x());
    this.weight = scene.loadedBoat().stiff().loading().centre();
    this.lift =
        new Immersion()
            .at(plane)
            .add(model.form().outside(), 1)
            .add(model.form().skeg(), 1)
            .part()
            .centroid();
    this.hull = Slice.at(model.form().outside(), x);
    List<Point> all = seen();
    double[] across = all.stream().mapToDouble(Point::x).sorted().toArray();
    double[] up = all.stream().mapToDouble(Point::y).sorted().toArray();
    double width = across[across.length - 1] - across[0];
    double height = up[up.length - 1] - up[0];
    double perMetre = Math.min((Canvas.WIDTH - 2 * MARGIN) / width, TALLEST / height);
    double middle = (across[across.length - 1] + across[0]) / 2;
    this.scale =
        new Scale(
            perMetre, Canvas.WIDTH / 2 - perMetre * middle, TOP + perMetre * up[up.length - 1]);
    this.foot = TOP + perMetre * height;
  }

  /** A place a little inside the ends, where a cut still has an area. */
  private static double within(Solid hull, double x) {
    Span along = hull.extent(Vector3.of(1, 0, 0));
    double inset = along.length() / 50;
    return Math.max(along.from() + inset, Math.min(along.to() - inset, x));
  }

  static View of(Scene scene, HeeledScene heeled) {
    return new SectionView(scene, heeled).view();
  }

  /** Metres to starboard and above the water, as seen from aft. */
  private Point seen(Vector3 point) {
    return new Point(-plane.athwart().dot(point), plane.above(point));
  }

  private Point at(Vector3 point) {
    Point seen = seen(point);
    return scale.at(seen.x(), seen.y());
  }

  private List<Point> seen() {
    return Stream.of(
            hull.stream().flatMap(List::stream),
            Stream.of(weight, lift, lowest.at()),
            heeled.moved().stream().flatMap(SectionView::around))
        .flatMap(s -> s)
        .map(this::seen)
        .toList();
  }

  private static Stream<Vector3> around(Body body) {
    return Stream.of(
        body.middle().plus(Vector3.of(0, DISC, DISC)),
        body.middle().minus(Vector3.of(0, DISC, DISC)));
  }

  private PictureFacts facts() {
    return new PictureFacts.Section(
        scene.aboard(),
        heeled.curve().side(),
        heeled.heel(),
        heeled.rest().isPresent(),
        heeled.atFlooding(),
        heeled.curve().end(),
        x,
        arm(),
        lowest.name(),
        freeboard());
  }

  private double freeboard() {
    return plane.above(lowest.at());
  }

  private View view() {
    return new View(facts(), foot + FOOT, this::draw);
  }

  private void draw(Canvas canvas) {
    water(canvas);
    hull(canvas);
    heeled
        .moved()
        .forEach(
            b ->
                canvas.circle(
                    "person", at(b.middle()), DISC * scale.perMetre(), "#d9d9d9", Pen.FINE));
    surface(canvas);
    arm(canvas);
    edge(canvas);
    scale.bar(canvas, new Point(16, foot + 26), 0.5, scene.units());
  }

  private void water(Canvas canvas) {
    double surface = scale.foot();
    canvas.area(
        "sea",
        List.of(
            new Point(0, surface),
            new Point(Canvas.WIDTH, surface),
            new Point(Canvas.WIDTH, foot + 10),
            new Point(0, foot + 10)),
        "#e4e4e4");
  }

  private void surface(Canvas canvas) {
    double surface = scale.foot();
    canvas.line("surface", new Point(0, surface), new Point(Canvas.WIDTH, surface), Pen.PLAIN);
    canvas.small("surface-word", new Point(6, surface + 20), Canvas.Anchor.START, "water");
  }

  /** The dry inside: white down to the skin, and open at the top. */
  private void hull(Canvas canvas) {
    canvas.area("dry", Slice.loop(hull).stream().map(this::at).toList(), "#fff");
    canvas.strokes(
        "hull",
        Slice.withoutLid(hull, model.form().railAt(x, true), model.form().railAt(x, false)).stream()
            .map(piece -> piece.stream().map(this::at).toList())
            .toList(),
        Pen.THICK);
  }

  private void arm(Canvas canvas) {
    Point g = at(weight);
    Point b = at(lift);
    Point over = new Point(b.x(), g.y());
    canvas.line("lift-line", b, over, Pen.dashed(1.5, "5 4"));
    canvas.line("arm", g, over, Pen.THICK);
    canvas.circle("weight", g, DOT, "#000", Pen.FINE);
    canvas.circle("lift", b, DOT, "#fff", Pen.PLAIN);
    boolean liftRight = b.x() >= g.x();
    canvas.words(
        "weight-word",
        new Point(g.x() + (liftRight ? -10 : 10), g.y() + 7),
        liftRight ? Canvas.Anchor.END : Canvas.Anchor.START,
        "G");
    canvas.words("lift-word", new Point(b.x() + 11, b.y() + 7), Canvas.Anchor.START, "B");
    canvas.words(
        "arm-word",
        new Point((g.x() + b.x()) / 2, g.y() - 12),
        Canvas.Anchor.MIDDLE,
        scene.units().label(arm()));
  }

  /** The horizontal distance from G to B, m; positive when it rights the boat. */
  private double arm() {
    return heeled.curve().side().sign() * (seen(lift).x() - seen(weight).x());
  }

  private void edge(Canvas canvas) {
    Point edge = at(lowest.at());
    boolean right = edge.x() >= Canvas.WIDTH / 2;
    double out = right ? 14 : -14;
    Canvas.Anchor anchor = right ? Canvas.Anchor.START : Canvas.Anchor.END;
    canvas.circle("lowest-edge", edge, DOT - 1, "#000", Pen.FINE);
    if (heeled.atFlooding()) {
      canvas.words("edge-word", new Point(edge.x() + out, edge.y() - 12), anchor, "floods");
      return;
    }
    Point above = new Point(edge.x() + out, edge.y());
    Point below = new Point(edge.x() + out, scale.foot());
    canvas.strokes(
        "edge",
        List.of(
            List.of(above, below),
            List.of(new Point(above.x() - 7, above.y()), new Point(above.x() + 7, above.y()))),
        Pen.PLAIN);
    double middle = (above.y() + below.y()) / 2 + 7;
    canvas.words(
        "edge-word",
        new Point(edge.x() + 1.6 * out, middle),
        anchor,
        scene.units().label(freeboard()));
  }
}
