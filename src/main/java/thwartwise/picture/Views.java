package thwartwise.picture;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.hull.UnusableBoat;
import thwartwise.inspection.Report;
import thwartwise.picture.Pictures.MissingPicture;

/**
 * The views of one inspected boat, in the order they are shown.
 *
 * @param omitted those that could not be drawn
 */
record Views(List<View> drawn, List<MissingPicture> omitted) {

  static Views of(Boat boat, Report report, LocalDate today) {
    try {
      return of(Scene.of(BoatModel.of(boat, today), report));
    } catch (UnusableBoat e) {
      return new Views(List.of(), List.of(new MissingPicture.Unusable(e.getMessage())));
    }
  }

  private static Views of(Scene scene) {
    List<View> drawn = new ArrayList<>();
    List<MissingPicture> leftOut = new ArrayList<>();
    drawn.add(PlanView.of(scene));
    drawn.add(SideView.of(scene));
    SwampedView.of(scene)
        .ifPresentOrElse(
            drawn::add, () -> leftOut.add(new MissingPicture.OfSwamped(scene.swampedRest())));
    HeeledScene.of(scene)
        .ifPresentOrElse(
            heeled -> {
              drawn.add(SectionView.of(scene, heeled));
              drawn.add(MomentCurve.of(scene, heeled));
            },
            () -> leftOut.add(new MissingPicture.OfHeeled()));
    return new Views(drawn, leftOut);
  }
}
