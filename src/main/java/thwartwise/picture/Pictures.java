package thwartwise.picture;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.Craft;
import thwartwise.boat.UnusableBoat;
import thwartwise.inspection.Report;

/**
 * The pictures of one inspected boat, in the order they are told.
 *
 * @param leftOut a sentence for each that could not be drawn, which says why
 */
public record Pictures(List<Picture> drawn, List<String> leftOut) {

  public Pictures {
    drawn = List.copyOf(drawn);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * @param today the day the boat was inspected
   */
  public static Pictures of(Boat boat, Report report, LocalDate today) {
    try {
      return of(Scene.of(Craft.of(boat, today), report));
    } catch (UnusableBoat e) {
      return new Pictures(
          List.of(),
          List.of("No picture could be drawn from these measurements: " + e.getMessage()));
    }
  }

  private static Pictures of(Scene scene) {
    List<Picture> drawn = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    drawn.add(SideView.of(scene));
    drawn.add(PlanView.of(scene));
    Heeled.of(scene)
        .ifPresentOrElse(
            heeled -> {
              drawn.add(SectionView.of(scene, heeled));
              drawn.add(MomentCurve.of(scene, heeled));
            },
            () ->
                leftOut.add(
                    "How it heels is not drawn, because no way was found in which it floats upright"));
    return new Pictures(drawn, leftOut);
  }
}
