package thwartwise.picture;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LetterGridTest {
  // 64 columns of 10 units, rows of 20.
  private final LetterGrid grid = new LetterGrid(100, 64);

  private static Point at(double column, double row) {
    return new Point((column + 0.5) * 10, (row + 0.5) * 20);
  }

  @Test
  void lines_lean_as_they_were_drawn() {
    grid.line("level", at(0, 0), at(3, 0), Pen.PLAIN);
    grid.line("upright", at(6, 0), at(6, 2), Pen.PLAIN);
    grid.line("down", at(8, 0), at(10, 2), Pen.PLAIN);
    grid.line("up", at(12, 2), at(14, 0), Pen.PLAIN);

    assertThat(grid.whole())
        .isEqualTo(
            """
            ____  | \\     /
                  |  \\   /
                  |   \\ /
            """);
  }

  @Test
  void an_area_is_filled_inside_and_nowhere_else() {
    List<Point> square = List.of(at(1, 1), at(5, 1), at(5, 4), at(1, 4));
    grid.hatched("chamber", square, Hatching.COUNTS);

    assertThat(grid.whole())
        .isEqualTo(
            """

             ####
             ####
             ####
            """);
  }

  @Test
  void lettering_stands_on_its_point_and_never_runs_out_of_the_picture() {
    grid.words("middle", at(5, 1), Canvas.Anchor.MIDDLE, "abc");
    grid.words("end", new Point(640, 70), Canvas.Anchor.START, "xyz");

    List<String> lines = grid.whole().lines().toList();
    assertThat(lines.get(1)).isEqualTo("    abc");
    assertThat(lines.get(3)).endsWith("xyz").hasSize(64);
  }

  @Test
  void what_lies_outside_is_left_out() {
    grid.mark("kit", new Point(-5, -5));
    grid.circle("person", new Point(700, 50), 5, "#fff", Pen.PLAIN);
    grid.line("far", at(-3, 0), at(1, 0), Pen.PLAIN);

    assertThat(grid.whole()).isEqualTo("__\n");
  }
}
