package thwartwise.page;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LineWrapTest {
  @Test
  void words_fill_a_line_and_hang_under_its_start() {
    assertThat(LineWrap.lines("one two three four", "* ", "  ", 10))
        .containsExactly("* one two", "  three", "  four");
  }

  @Test
  void a_word_longer_than_a_line_is_broken_between_letters() {
    assertThat(LineWrap.lines("a xxxxxxxxxx b", "", "", 4))
        .containsExactly("a", "xxxx", "xxxx", "xx b");
    assertThat(LineWrap.lines("🥄🥄🥄", "", "", 5)).containsExactly("🥄🥄", "🥄");
  }

  @Test
  void a_tied_blank_keeps_a_figure_beside_its_unit() {
    assertThat(LineWrap.lines("it has " + FigureText.with("0.21", "m"), "", "", 12))
        .containsExactly("it has", "0.21 m");
  }

  @Test
  void tabs_and_line_ends_are_blanks_and_escapes_are_neutralised() {
    assertThat(LineWrap.lines(" a\tb\nc \u001b[2J", "", "", 80)).containsExactly("a b c ?[2J");
  }

  @Test
  void nothing_is_one_empty_line() {
    assertThat(LineWrap.lines("", "", "", 80)).containsExactly("");
  }
}
