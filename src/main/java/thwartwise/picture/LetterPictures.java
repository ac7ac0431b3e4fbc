package thwartwise.picture;

import java.time.LocalDate;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.inspection.Report;
import thwartwise.picture.Pictures.MissingPicture;

/**
 * The pictures of one inspected boat in letters, for a terminal, in the order they are shown.
 *
 * @param leftOut those that could not be drawn
 */
public record LetterPictures(List<Sketch> drawn, List<MissingPicture> leftOut) {

  public LetterPictures {
    drawn = List.copyOf(drawn);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * @param today the day the boat was inspected
   * @param columns of the terminal
   */
  public static LetterPictures of(Boat boat, Report report, LocalDate today, int columns) {
    Views views = Views.of(boat, report, today);
    return new LetterPictures(
        views.drawn().stream().map(v -> new Sketch(v.facts(), v.letters(columns))).toList(),
        views.leftOut());
  }

  /** One picture in letters and what it shows. */
  public record Sketch(PictureFacts facts, String drawing) {}
}
