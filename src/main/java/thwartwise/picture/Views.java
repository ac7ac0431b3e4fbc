package thwartwise.picture;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.Craft;
import thwartwise.boat.UnusableBoat;
import thwartwise.inspection.Report;

/**
 * The views of one inspected boat, in the order they are shown.
 *
 * @param leftOut a sentence for each that could not be drawn, which says why
 */
record Views(List<View> drawn, List<String> leftOut) {

  static Views of(Boat boat, Report report, LocalDate today) {
    try {
      return of(Scene.of(Craft.of(boat, today), report));
    } catch (UnusableBoat e) {
      return new Views(
          List.of(),
          List.of("No picture could be drawn from these measurements: " + e.getMessage()));
    }
  }

  private static Views of(Scene scene) {
    List<View> drawn = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    drawn.add(PlanView.of(scene));
    drawn.add(SideView.of(scene));
    SwampedView.of(scene)
        .ifPresentOrElse(drawn::add, () -> leftOut.add(SwampedView.missing(scene)));
    Heeled.of(scene)
        .ifPresentOrElse(
            heeled -> {
              drawn.add(SectionView.of(scene, heeled));
              drawn.add(MomentCurve.of(scene, heeled));
            },
            () ->
                leftOut.add(
                    "How it heels is not drawn, because no way was found in which it floats upright"));
    return new Views(drawn, leftOut);
  }
}
