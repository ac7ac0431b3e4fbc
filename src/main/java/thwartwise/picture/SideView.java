package thwartwise.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.Pose;
import thwartwise.boat.BoatModel;
import thwartwise.geometry.WaterPlane;

/**
 * The boat from its starboard side, bow to the right, kept level: the water is drawn relative to
 * the boat, empty, loaded and swamped.
 */
final class SideView {
  private static final double LEFT = 22;
  private static final double LABELS = 196;
  private static final double OVER = 16;
  private static final double MOST_PER_METRE = 190;
  private static final double TOP = 26;
  private static final double FOOT = 52;
  private static final double LABEL_GAP = 25;

  private final Scene scene;
  private final BoatModel model;
  private final List<Point> hull;
  private final List<Point> skeg;
  private final List<Water> waters;
  private final double aft;
  private final double fore;
  private final Scale scale;
  private final double foot;

  /** The water of one state, with its dashes and its words. */
  private record Water(String kind, String label, WaterPlane plane, Pen pen) {

    /** Its height in the middle plane of the boat. */
    double at(double x) {
      return (plane.height() - plane.up().x() * x) / plane.up().z();
    }
  }

  private SideView(Scene scene) {
    this.scene = scene;
    this.model = scene.model();
    this.hull = Silhouette.fromTheSide(model.form().outside());
    this.skeg =
        model.form().skeg().triangleCount() > 0
            ? Silhouette.fromTheSide(model.form().skeg())
            : List.of();
    this.waters = waters();
    this.aft = hull.stream().mapToDouble(Point::x).min().orElseThrow();
    this.fore = hull.stream().mapToDouble(Point::x).max().orElseThrow();
    double room = Canvas.WIDTH - LEFT - LABELS - 2 * OVER;
    double perMetre = Math.min(MOST_PER_METRE, room / (fore - aft));
    double[] heights = heights();
    double left = LEFT + OVER - perMetre * aft;
    this.scale = new Scale(perMetre, left, TOP + perMetre * heights[1]);
    this.foot = TOP + perMetre * (heights[1] - heights[0]);
  }

  private double[] heights() {
    double[] all =
        Stream.of(
                hull.stream().map(Point::y),
                skeg.stream().map(Point::y),
                waters.stream().flatMap(w -> Stream.of(w.at(aft), w.at(fore))),
                model.boat().kit().stream().map(kit -> kit.at().z()),
                scene.crew().stream().map(body -> body.seat() + SeatedFigure.crown()))
            .flatMap(s -> s)
            .mapToDouble(Double::doubleValue)
            .sorted()
            .toArray();
    return new double[] {all[0], all[all.length - 1]};
  }

  static View of(Scene scene) {
    return new SideView(scene).view();
  }

  private List<Water> waters() {
    List<Water> all = new ArrayList<>();
    add(all, "empty", scene.empty(), Pen.DOTTED);
    if (!scene.crew().isEmpty()) {
      add(all, "loaded", scene.loaded(), Pen.THICK);
    }
    Scene.upright(scene.swamped())
        .ifPresent(
            pose -> all.add(new Water("swamped", "swamped", pose.plane(), Pen.dashed(3, "14 7"))));
    return all;
  }

  private void add(List<Water> all, String kind, Equilibria rest, Pen pen) {
    Scene.upright(rest)
        .ifPresent(
            pose -> all.add(new Water(kind, kind + " " + above(pose.plane()), pose.plane(), pen)));
  }

  private String above(WaterPlane plane) {
    double height = Freeboard.least(model.edges(), plane).height();
    return height < 0 ? "awash" : scene.units().label(height).replace('\u00a0', ' ');
  }

  private PictureFacts facts() {
    return new PictureFacts.Profile(
        scene.aboard(),
        waters.stream().map(Water::label).toList(),
        Scene.upright(scene.empty()).isPresent(),
        Scene.upright(scene.loaded()).isPresent(),
        scene.swampedRest(),
        Scene.upright(scene.swamped()).map(Pose::heel).orElse(0.0));
  }

  private View view() {
    return new View(facts(), foot + FOOT, this::draw);
  }

  private void draw(Canvas canvas) {
    sea(canvas);
    if (!skeg.isEmpty()) {
      canvas.polygon("skeg", scale.all(skeg), "#fff", Pen.PLAIN);
    }
    scene.crew().forEach(body -> SeatedFigure.of(body, scene).fromTheSide(canvas, scale, p -> p));
    canvas.polygon("hull", scale.all(hull), "#fff", Pen.THICK);
    model.boat().kit().forEach(k -> canvas.mark("kit", scale.at(k.at().x(), k.at().z())));
    waters.forEach(water -> line(canvas, water));
    labels(canvas);
    scale.bar(canvas, new Point(LEFT + OVER, foot + 32), 1, scene.units());
    canvas.small(
        "bow", new Point(scale.at(fore, 0).x(), foot + 38), Canvas.Anchor.END, "bow \u2192");
  }

  /** A light background under the loaded waterline, or the only one there is. */
  private void sea(Canvas canvas) {
    waters.stream()
        .filter(w -> w.kind().equals(scene.crew().isEmpty() ? "empty" : "loaded"))
        .findFirst()
        .ifPresent(
            water -> {
              List<Point> ends = ends(water);
              double under = foot + 8;
              canvas.area(
                  "sea",
                  List.of(
                      ends.get(0),
                      ends.get(1),
                      new Point(ends.get(1).x(), under),
                      new Point(ends.get(0).x(), under)),
                  "#e9e9e9");
            });
  }

  private List<Point> ends(Water water) {
    double over = OVER / scale.perMetre();
    return List.of(
        scale.at(aft - over, water.at(aft - over)), scale.at(fore + over, water.at(fore + over)));
  }

  private void line(Canvas canvas, Water water) {
    List<Point> ends = ends(water);
    canvas.line("water-" + water.kind(), ends.get(0), ends.get(1), water.pen());
  }

  private void labels(Canvas canvas) {
    List<Double> wanted = waters.stream().map(w -> ends(w).get(1).y()).toList();
    double[] places = LabelSpacing.moved(wanted, LABEL_GAP, TOP - 4, foot + 24);
    for (int i = 0; i < places.length; i++) {
      Point end = ends(waters.get(i)).get(1);
      Point label = new Point(end.x() + 14, places[i]);
      canvas.line("label-leader", end, label, Pen.FINE);
      canvas.words(
          "label",
          new Point(label.x() + 3, label.y() + 7),
          Canvas.Anchor.START,
          waters.get(i).label());
    }
  }
}
