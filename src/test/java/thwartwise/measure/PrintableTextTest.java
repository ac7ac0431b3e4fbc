package thwartwise.measure;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintableTextTest {
  @Test
  void escapes_line_ends_and_turned_text_become_question_marks() {
    assertThat(PrintableText.of("a\u001b[31mb\nc\rd\u202ee\u2028f\u0000\u009b\ud800"))
        .isEqualTo("a?[31mb?c?d?e?f???");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Crème", "スプーン", "🥄", "👩‍🍳", "می‌خواهم", "tab-less words"})
  void ordinary_words_of_any_language_stay(String words) {
    assertThat(PrintableText.of(words)).isEqualTo(words);
    assertThat(PrintableText.firstUnprintable(words)).isEmpty();
  }

  @Test
  void a_long_text_is_cut_in_a_quote_but_never_through_a_character() {
    assertThat(PrintableText.quoted("🥄".repeat(61))).isEqualTo("\"" + "🥄".repeat(60) + "…\"");
    assertThat(PrintableText.quoted("🥄".repeat(60))).isEqualTo("\"" + "🥄".repeat(60) + "\"");
  }

  @Test
  void a_short_excerpt_stands_as_it_is() {
    assertThat(PrintableText.excerpt("1.02 m")).isEqualTo("\"1.02 m\"");
  }

  @Test
  void a_long_excerpt_is_cut_after_forty_characters_and_never_inside_one() {
    assertThat(PrintableText.excerpt("🛶".repeat(41))).isEqualTo("\"" + "🛶".repeat(40) + "…\"");
  }

  @Test
  void escape_codes_line_breaks_and_direction_marks_are_taken_out() {
    assertThat(PrintableText.excerpt("a\u001b[31mb\r\n\u202ec\ud800"))
        .isEqualTo("\"a?[31mb???c?\"");
  }
}
