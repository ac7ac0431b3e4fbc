package thwartwise.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class QuotedTextTest {

  @Test
  void a_short_text_stands_as_it_is() {
    assertThat(QuotedText.of("1.02 m")).isEqualTo("\"1.02 m\"");
  }

  @Test
  void a_long_text_is_cut_after_forty_characters_and_never_inside_one() {
    assertThat(QuotedText.of("🛶".repeat(41))).isEqualTo("\"" + "🛶".repeat(40) + "…\"");
  }

  @Test
  void escape_codes_line_breaks_and_direction_marks_are_taken_out() {
    assertThat(QuotedText.of("a\u001b[31mb\r\n\u202ec\ud800")).isEqualTo("\"a?[31mb???c?\"");
  }
}
