package thwartwise.measure;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NegativeAnswerTest {

  @ParameterizedTest
  @ValueSource(strings = {"no", " No ", "NONE", "nothing", "left open", "n/a", "-", "\u2013"})
  void words_for_none_say_so_in_any_capitals(String typed) {
    assertThat(NegativeAnswer.matches(typed)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"bung", "open-cell plug", "nozzle", "noon", "yes", ""})
  void the_name_of_a_thing_is_no_word_for_none(String typed) {
    assertThat(NegativeAnswer.matches(typed)).isFalse();
  }

  @Test
  void a_text_without_end_is_not_even_looked_at() {
    assertThat(NegativeAnswer.matches(" ".repeat(1_000_000) + "no")).isFalse();
  }
}
