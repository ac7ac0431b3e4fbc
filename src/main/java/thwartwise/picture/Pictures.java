package thwartwise.picture;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.hull.UnusableBoat;
import thwartwise.inspection.Report;
import thwartwise.loadcase.Crew;
import thwartwise.picture.PictureFacts.SwampedRest;
import thwartwise.picture.Pictures.MissingPicture;
import thwartwise.remedy.Deed;

/**
 * The pictures of one inspected boat, in the order shown.
 *
 * @param omitted those that could not be drawn
 * @param change before and after the first piece of advice, which stands with that advice
 */
public record Pictures(
    List<Picture> drawn, List<MissingPicture> omitted, Optional<Picture> change) {

  public Pictures {
    drawn = List.copyOf(drawn);
    omitted = List.copyOf(omitted);
  }

  public Pictures(List<Picture> drawn, List<MissingPicture> leftOut) {
    this(drawn, leftOut, Optional.empty());
  }

  /**
   * A copy with the swamped boat before a change and after it.
   *
   * @param crew the crew for whom the gain is reported
   */
  public Pictures with(Boat boat, Deed deed, Crew crew, LocalDate today) {
    return new Pictures(drawn, omitted, ChangeView.of(boat, deed, crew, today).map(View::picture));
  }

  /**
   * @param today the day the boat was inspected
   */
  public static Pictures of(Boat boat, Report report, LocalDate today) {
    Views views = Views.of(boat, report, today);
    return new Pictures(views.drawn().stream().map(View::picture).toList(), views.omitted());
  }

  /** A picture that could not be drawn, and why. */
  public sealed interface MissingPicture {

    /**
     * None of them, because the boat cannot be built.
     *
     * @param message that names the measurements at fault
     */
    record Unusable(String message) implements MissingPicture {}

    /** The one of the swamped boat. */
    record OfSwamped(SwampedRest rest) implements MissingPicture {}

    /** Those of the heeled boat, because it does not float upright. */
    record OfHeeled() implements MissingPicture {}
  }

  /**
   * The pictures of one inspected boat in letters, for a terminal, in the order shown.
   *
   * @param omitted those that could not be drawn
   */
  public record LetterPictures(List<Sketch> drawn, List<MissingPicture> omitted) {

    public LetterPictures {
      drawn = List.copyOf(drawn);
      omitted = List.copyOf(omitted);
    }

    /**
     * @param today the day the boat was inspected
     * @param columns of the terminal
     */
    public static LetterPictures of(Boat boat, Report report, LocalDate today, int columns) {
      Views views = Views.of(boat, report, today);
      return new LetterPictures(
          views.drawn().stream().map(v -> new Sketch(v.facts(), v.letters(columns))).toList(),
          views.omitted());
    }

    /** One picture in letters and its facts. */
    public record Sketch(PictureFacts facts, String drawing) {}
  }

  /**
   * The views of one inspected boat, in the order shown.
   *
   * @param omitted those that could not be drawn
   */
  private record Views(List<View> drawn, List<MissingPicture> omitted) {

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
}
