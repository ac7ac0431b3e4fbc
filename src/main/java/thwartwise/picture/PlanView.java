package thwartwise.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.Space;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * The plan, bow to the right: what lifts the boat when it is swamped and what does not, seats, kit.
 */
final class PlanView {
  private static final double MARGIN = 34;
  private static final double MOST_PER_METRE = 190;
  private static final double LABEL_ROW = 44;
  private static final double FOOT = 48;
  private static final double LABEL_GAP = 26;

  /** More things than this have no numbers, which would overlap. */
  private static final int MOST_NUMBERS = 22;

  private static final List<Hatching> CHAMBERS =
      List.of(Hatching.COUNTS, Hatching.CLAIMED, Hatching.OPEN);

  private final Scene scene;
  private final BoatModel model;
  private final List<Point> outline;
  private final Scale scale;
  private final double foot;
  private final PictureKey key;

  private PlanView(Scene scene) {
    this.scene = scene;
    this.model = scene.model();
    this.outline = Silhouette.fromAbove(model.form().outside());
    double[] along = extent(Point::x, Vector3::x);
    double[] across = extent(Point::y, Vector3::y);
    double perMetre = Math.min(MOST_PER_METRE, (Canvas.WIDTH - 2 * MARGIN) / (along[1] - along[0]));
    double top = model.boat().kit().isEmpty() ? MARGIN / 2 : LABEL_ROW;
    double left = (Canvas.WIDTH - perMetre * (along[0] + along[1])) / 2;
    this.scale = new Scale(perMetre, left, top + perMetre * across[1]);
    this.foot = top + perMetre * (across[1] - across[0]);
    this.key = key();
  }

  /** The range of the outline and the kit, along or across. */
  private double[] extent(ToDoubleFunction<Point> ofHull, ToDoubleFunction<Vector3> ofKit) {
    double[] reach =
        Stream.concat(
                outline.stream().map(ofHull::applyAsDouble),
                model.boat().kit().stream().map(Kit::at).map(ofKit::applyAsDouble))
            .mapToDouble(Double::doubleValue)
            .sorted()
            .toArray();
    return new double[] {reach[0], reach[reach.length - 1]};
  }

  static View of(Scene scene) {
    return new PlanView(scene).view();
  }

  private PictureFacts facts() {
    int kit = model.boat().kit().size();
    return new PictureFacts.Plan(
        scene.aboard(),
        model.boat().places().size(),
        kit,
        kit <= MOST_NUMBERS,
        chambers(Hatching.COUNTS).size(),
        chambers(Hatching.CLAIMED).size(),
        chambers(Hatching.OPEN).size());
  }

  private List<Space> chambers(Hatching state) {
    return model.spaces().stream().filter(space -> Hatching.of(space) == state).toList();
  }

  private View view() {
    return new View(facts(), foot + LABEL_ROW + key.height() + FOOT, this::draw);
  }

  private void draw(Canvas canvas) {
    canvas.polygon("hull", scale.all(outline), "#fff", Pen.THICK);
    chambers(canvas);
    places(canvas);
    scene.crew().forEach(body -> SeatedFigure.of(body, scene).fromAbove(canvas, scale));
    kit(canvas);
    key.draw(canvas, foot + LABEL_ROW);
    double under = foot + LABEL_ROW + key.height();
    canvas.small("bow", new Point(Canvas.WIDTH - 8, under + 32), Canvas.Anchor.END, "bow \u2192");
    scale.bar(canvas, new Point(12, under + 26), 1, scene.units());
  }

  private void chambers(Canvas canvas) {
    model.spaces().stream()
        .sorted(Comparator.comparingDouble(space -> space.solid().centroid().z()))
        .forEach(
            space ->
                canvas.hatched(
                    kind(space),
                    scale.all(Silhouette.fromAbove(space.solid())),
                    Hatching.of(space)));
  }

  private static String kind(Space space) {
    return "chamber-" + Hatching.of(space).name().toLowerCase(Locale.ROOT);
  }

  private void places(Canvas canvas) {
    List<Place> places = model.boat().places();
    double[] letters = spread(places.stream().map(Place::x).toList());
    for (int i = 0; i < places.size(); i++) {
      Place place = places.get(i);
      Point starboard = scale.at(place.x(), place.across().from());
      if (place.hasLength()) {
        canvas.polygon("place", scale.all(corners(place)), "none", Pen.THICK);
      } else {
        canvas.line("place", scale.at(place.x(), place.across().to()), starboard, Pen.THICK);
      }
      Point under = new Point(letters[i], foot + 12);
      canvas.line("place-leader", starboard, under, Pen.FINE);
      canvas.words(
          "place-letter", new Point(letters[i], foot + 32), Canvas.Anchor.MIDDLE, placeLetter(i));
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

  private void kit(Canvas canvas) {
    List<Kit> kit = model.boat().kit();
    double[] numbers = spread(kit.stream().map(k -> k.at().x()).toList());
    for (int i = 0; i < kit.size(); i++) {
      Point at = scale.at(kit.get(i).at().x(), kit.get(i).at().y());
      if (kit.size() <= MOST_NUMBERS) {
        canvas.line("kit-leader", at, new Point(numbers[i], LABEL_ROW - 14), Pen.FINE);
        canvas.words(
            "kit-number",
            new Point(numbers[i], LABEL_ROW - 18),
            Canvas.Anchor.MIDDLE,
            "" + (i + 1));
      }
      canvas.mark("kit", at);
    }
  }

  private double[] spread(List<Double> metres) {
    return LabelSpacing.moved(
        metres.stream().map(x -> scale.at(x, 0).x()).toList(),
        LABEL_GAP,
        MARGIN / 2,
        Canvas.WIDTH - MARGIN / 2);
  }

  private PictureKey key() {
    PictureKey all = new PictureKey();
    List<Place> places = model.boat().places();
    for (int i = 0; i < places.size(); i++) {
      all.name(letter("place-letter", placeLetter(i)), places.get(i).name());
    }
    all.endRow();
    List<Kit> kit = model.boat().kit();
    for (int i = 0; i < kit.size() && kit.size() <= MOST_NUMBERS; i++) {
      all.name(letter("kit-number", "" + (i + 1)), kit.get(i).name());
    }
    for (Hatching state : CHAMBERS) {
      if (!chambers(state).isEmpty()) {
        all.list(swatch(state), named(state));
      }
    }
    return all.endRow();
  }

  /** The meaning of a state, and its chambers. */
  private String named(Hatching state) {
    return state.legend()
        + ": "
        + chambers(state).stream().map(Space::name).collect(Collectors.joining(", "));
  }

  private static String placeLetter(int place) {
    return place < 26 ? Character.toString('A' + place) : "";
  }

  private static PictureKey.Sign letter(String kind, String letter) {
    return (canvas, middle) ->
        canvas.small(kind, new Point(middle.x(), middle.y() + 8), Canvas.Anchor.MIDDLE, letter);
  }

  private static PictureKey.Sign swatch(Hatching state) {
    return (canvas, middle) ->
        canvas.hatched(
            "swatch",
            List.of(
                new Point(middle.x() - 14, middle.y() - 10),
                new Point(middle.x() + 14, middle.y() - 10),
                new Point(middle.x() + 14, middle.y() + 10),
                new Point(middle.x() - 14, middle.y() + 10)),
            state);
  }
}
