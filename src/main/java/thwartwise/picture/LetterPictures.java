package thwartwise.picture;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.inspection.Report;

/** The pictures of one inspected boat in letters, for a terminal. */
public final class LetterPictures {
  private LetterPictures() {}

  /**
   * Each under its title, with its caption, which is not broken into lines; then a sentence for
   * each that could not be drawn.
   *
   * @param columns of the terminal
   */
  public static List<Sketch> of(Boat boat, Report report, LocalDate today, int columns) {
    Views views = Views.of(boat, report, today);
    return Stream.concat(
            views.drawn().stream().map(v -> new Sketch(v.title(), v.letters(columns), v.caption())),
            views.leftOut().stream().map(why -> new Sketch("", "", why)))
        .toList();
  }

  /** One picture in letters; title and drawing are blank where it could not be drawn. */
  public record Sketch(String title, String drawing, String caption) {}
}
