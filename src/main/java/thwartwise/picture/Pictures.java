package thwartwise.picture;

import java.time.LocalDate;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.inspection.Report;

/**
 * The pictures of one inspected boat, in the order they are shown.
 *
 * @param leftOut those that could not be drawn
 */
public record Pictures(List<Picture> drawn, List<MissingPicture> leftOut) {

  public Pictures {
    drawn = List.copyOf(drawn);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * @param today the day the boat was inspected
   */
  public static Pictures of(Boat boat, Report report, LocalDate today) {
    Views views = Views.of(boat, report, today);
    return new Pictures(views.drawn().stream().map(View::picture).toList(), views.leftOut());
  }
}
