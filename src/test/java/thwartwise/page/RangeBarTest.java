package thwartwise.page;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Of a bar 12 characters wide the limit stands in the fifth, a third of the way along. */
class RangeBarTest {
  private static final String WORDS = "from 0.15 m to 0.30 m, limit 0.20 m";

  @Test
  void a_range_that_keeps_its_limit_lies_to_the_right_of_it() {
    assertThat(new RangeBar(0.05, 0.10, 0.20, WORDS).text(12)).isEqualTo("    | ==o===");
  }

  @Test
  void a_range_that_may_fall_short_reaches_over_the_limit() {
    assertThat(new RangeBar(-0.05, 0.05, 0.10, WORDS).text(12)).isEqualTo("====|===o===");
  }

  @Test
  void a_range_that_falls_short_ends_left_of_the_limit() {
    assertThat(new RangeBar(-0.20, -0.10, -0.05, WORDS).text(12)).isEqualTo("==o=|       ");
  }

  @Test
  void a_figure_without_a_range_is_its_middle() {
    assertThat(new RangeBar(0.1, 0.1, 0.1, WORDS).text(12)).isEqualTo("    |      o");
    assertThat(new RangeBar(0, 0, 0, WORDS).text(12)).isEqualTo("    o       ");
  }

  @Test
  void ranges_stand_below_each_other_after_their_word() {
    Table table =
        new Table(
            List.of(new Table.Column("Heel", 6), new Table.Column("Left", 12)),
            List.of(
                List.of(
                    new Table.Words("12°"),
                    new Table.Ranges(
                        "close",
                        List.of(
                            new RangeBar(0.05, 0.10, 0.20, WORDS),
                            new RangeBar(-0.20, -0.10, -0.05, "short"))))),
            true);
    assertThat(new Page().table(table).toString())
        .isEqualTo(
            """
            Heel   Left
            ------ ------------
            12°    close
                       | ==o===
                   ==o=|
            """);
    assertThat(HtmlForm.of(new Page().table(table)))
        .contains("close<span class=\"range\" role=\"img\" aria-label=\"" + WORDS + "\"><svg")
        .contains("aria-label=\"short\"");
  }

  /** Of a printer without colour nothing is lost: only black, white and grey. */
  @Test
  void it_is_drawn_without_colour() {
    assertThat(new RangeBar(0.05, 0.10, 0.20, WORDS).svg())
        .doesNotContainPattern("#(?!000|bbb|fff)[0-9a-f]{3}")
        .contains("#bbb", "#000");
  }
}
