package thwartwise.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import thwartwise.boat.Body;
import thwartwise.boat.Craft;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.Space;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * The boat from above, bow to the right: what lifts it when it is swamped and what does not, where
 * people sit, where the kit is.
 */
final class PlanView {
  private static final double MARGIN = 34;
  private static final double MOST_PER_METRE = 190;
  private static final double LABEL_ROW = 44;
  private static final double FOOT = 76;
  private static final double LABEL_GAP = 26;

  private final Scene scene;
  private final Craft craft;
  private final PlanWords words;
  private final List<Point> outline;
  private final Scale scale;
  private final double foot;
  private final Svg svg;

  private PlanView(Scene scene) {
    this.scene = scene;
    this.craft = scene.craft();
    this.words = new PlanWords(scene);
    this.outline = Silhouette.fromAbove(craft.form().outside());
    double[] along = extent(Point::x, Vector3::x);
    double[] across = extent(Point::y, Vector3::y);
    double perMetre = Math.min(MOST_PER_METRE, (Svg.WIDTH - 2 * MARGIN) / (along[1] - along[0]));
    double top = craft.boat().kit().isEmpty() ? MARGIN / 2 : LABEL_ROW;
    double left = (Svg.WIDTH - perMetre * (along[0] + along[1])) / 2;
    this.scale = new Scale(perMetre, left, top + perMetre * across[1]);
    this.foot = top + perMetre * (across[1] - across[0]);
    this.svg = new Svg(foot + LABEL_ROW + FOOT);
  }

  /** What the outline and the kit reach over, along or across. */
  private double[] extent(ToDoubleFunction<Point> ofHull, ToDoubleFunction<Vector3> ofKit) {
    double[] reach =
        Stream.concat(
                outline.stream().map(ofHull::applyAsDouble),
                craft.boat().kit().stream().map(Kit::at).map(ofKit::applyAsDouble))
            .mapToDouble(Double::doubleValue)
            .sorted()
            .toArray();
    return new double[] {reach[0], reach[reach.length - 1]};
  }

  static Picture of(Scene scene) {
    return new PlanView(scene).picture();
  }

  private Picture picture() {
    svg.polygon("hull", scale.all(outline), "#fff", Pen.THICK);
    chambers();
    places();
    people();
    kit();
    key();
    svg.small("bow", new Point(Svg.WIDTH - 8, foot + LABEL_ROW + 60), Svg.Anchor.END, "bow \u2192");
    scale.bar(svg, new Point(12, foot + LABEL_ROW + 54), 1);
    return new Picture(
        "From above: places, people, kit and chambers",
        words.alternative(),
        words.caption(),
        svg.whole());
  }

  private void chambers() {
    craft.spaces().stream()
        .sorted(Comparator.comparingDouble(space -> space.solid().centroid().z()))
        .forEach(
            space ->
                PlanWords.state(space)
                    .fill(svg, kind(space), scale.all(Silhouette.fromAbove(space.solid()))));
  }

  private static String kind(Space space) {
    return "chamber-" + PlanWords.state(space).name().toLowerCase(Locale.ROOT);
  }

  private void places() {
    List<Place> places = craft.boat().places();
    double[] letters = spread(places.stream().map(Place::x).toList());
    for (int i = 0; i < places.size(); i++) {
      Place place = places.get(i);
      Point starboard = scale.at(place.x(), place.across().from());
      if (place.hasLength()) {
        svg.polygon("place", scale.all(corners(place)), "none", Pen.THICK);
      } else {
        svg.line("place", scale.at(place.x(), place.across().to()), starboard, Pen.THICK);
      }
      Point under = new Point(letters[i], foot + 12);
      svg.line("place-leader", starboard, under, Pen.FINE);
      svg.words(
          "place-letter", new Point(letters[i], foot + 32), Svg.Anchor.MIDDLE, PlanWords.letter(i));
    }
  }

  private static List<Point> corners(Place place) {
    Span along = place.along();
    Span across = place.across();
    return List.of(
        new Point(along.from(), across.to()),
        new Point(along.to(), across.to()),
        new Point(along.to(), across.from()),
        new Point(along.from(), across.from()));
  }

  private void kit() {
    List<Kit> kit = craft.boat().kit();
    double[] numbers = spread(kit.stream().map(k -> k.at().x()).toList());
    for (int i = 0; i < kit.size(); i++) {
      Point at = scale.at(kit.get(i).at().x(), kit.get(i).at().y());
      if (kit.size() <= PlanWords.MOST_NUMBERS) {
        svg.line("kit-leader", at, new Point(numbers[i], LABEL_ROW - 14), Pen.FINE);
        svg.words(
            "kit-number", new Point(numbers[i], LABEL_ROW - 18), Svg.Anchor.MIDDLE, "" + (i + 1));
      }
      svg.square("kit", at, 6, "#000");
    }
  }

  private double[] spread(List<Double> metres) {
    return Apart.moved(
        metres.stream().map(x -> scale.at(x, 0).x()).toList(),
        LABEL_GAP,
        MARGIN / 2,
        Svg.WIDTH - MARGIN / 2);
  }

  private void people() {
    for (Body body : scene.crew()) {
      svg.circle(
          "person",
          scale.at(body.x(), body.y()),
          Math.max(10, 0.12 * scale.perMetre()),
          "#fff",
          Pen.THICK);
    }
  }

  private void key() {
    double x = 12;
    for (Hatching state : words.byState().keySet()) {
      double y = foot + LABEL_ROW + 2;
      List<Point> swatch =
          List.of(
              new Point(x, y), new Point(x + 34, y),
              new Point(x + 34, y + 22), new Point(x, y + 22));
      state.fill(svg, "swatch", swatch);
      svg.small("swatch-word", new Point(x + 42, y + 17), Svg.Anchor.START, state.word());
      x += 60 + Svg.width(state.word(), Svg.SMALL);
    }
  }
}
