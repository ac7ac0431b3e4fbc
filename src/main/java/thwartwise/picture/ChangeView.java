package thwartwise.picture;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.hull.UnusableBoat;
import thwartwise.inspection.CrewAtLimit;
import thwartwise.loadcase.Crew;
import thwartwise.picture.PictureFacts.SwampedRest;
import thwartwise.remedy.Change;
import thwartwise.remedy.Changes;
import thwartwise.remedy.Deed;

/**
 * The swamped boat before a change and after it, one above the other, from the starboard side, with
 * the same crew.
 */
final class ChangeView {
  private static final double LABEL = 30;
  private static final double LOST = 60;

  private final Scene before;
  private final Scene after;
  private final Deed deed;

  private ChangeView(Scene before, Scene after, Deed deed) {
    this.before = before;
    this.after = after;
    this.deed = deed;
  }

  /**
   * Empty where the deed cannot be done to this boat, and where there is nothing to see because the
   * boat does not stay upright swamped after it.
   *
   * @param crew the crew for whom the gain is reported
   */
  static Optional<View> of(Boat boat, Deed deed, Crew crew, LocalDate today) {
    try {
      BoatModel model = BoatModel.of(boat, today);
      return after(model, deed, today)
          .map(changed -> BoatModel.of(changed, today))
          .map(changed -> new ChangeView(scene(model, crew), scene(changed, crew), deed))
          .filter(view -> view.after.swampedRest() == SwampedRest.UPRIGHT)
          .map(ChangeView::view);
    } catch (UnusableBoat e) {
      return Optional.empty();
    }
  }

  private static Optional<Boat> after(BoatModel model, Deed deed, LocalDate today) {
    if (deed instanceof Deed.DeedPair both) {
      return after(model, both.one(), today)
          .flatMap(done -> after(BoatModel.of(done, today), both.other(), today));
    }
    return Stream.concat(
            Changes.toTheBoat(model, today).stream(), Changes.toToday(model.boat()).stream())
        .filter(change -> change.deed().equals(deed))
        .map(Change::boat)
        .findFirst();
  }

  private static Scene scene(BoatModel model, Crew crew) {
    List<Body> people =
        crew instanceof Crew.Alike alike ? CrewAtLimit.seated(model, alike) : model.aboard();
    return Scene.of(model, people);
  }

  private View view() {
    Panel first = new Panel(before, LABEL);
    Panel second = new Panel(after, first.foot() + 2 * LABEL);
    return new View(
        new PictureFacts.Changed(
            before.aboard(), after.aboard(), deed, before.swampedRest(), after.swampedRest()),
        second.end(),
        canvas -> {
          first.draw(canvas, "today");
          second.draw(canvas, "afterwards");
          second.view.ifPresent(view -> view.foot(canvas));
        });
  }

  /** One of the two, or the reason why it cannot be drawn. */
  private static final class Panel {
    private final Scene scene;
    private final double top;
    private final Optional<SwampedView> view;

    private Panel(Scene scene, double top) {
      this.scene = scene;
      this.top = top;
      this.view = Scene.upright(scene.swamped()).map(pose -> new SwampedView(scene, pose, top));
    }

    double foot() {
      return view.map(SwampedView::lowest).orElse(top + LOST);
    }

    double end() {
      return view.map(SwampedView::end).orElse(top + LOST);
    }

    void draw(Canvas canvas, String when) {
      canvas.words("when", new Point(8, top - 6), Canvas.Anchor.START, when);
      view.ifPresentOrElse(
          shown -> shown.boat(canvas),
          () ->
              canvas.words(
                  "lost",
                  new Point(Canvas.WIDTH / 2, top + LOST / 2),
                  Canvas.Anchor.MIDDLE,
                  lost(scene.swampedRest())));
    }

    private static String lost(SwampedRest rest) {
      return switch (rest) {
        case SINKS -> "it sinks";
        case NOT_UPRIGHT -> "it rolls over";
        case NOT_ASSESSED, UPRIGHT -> "not worked out";
      };
    }
  }
}
