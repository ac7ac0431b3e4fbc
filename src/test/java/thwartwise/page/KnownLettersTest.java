package thwartwise.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class KnownLettersTest {
  @Test
  void letters_the_type_has_stay_as_they_are() {
    String known = "Löffel Ложка κουτάλι שלום 80\u00a0kg, 0.31\u00a0m³ – “é”\n";
    assertThat(KnownLetters.of(known)).isEqualTo(new KnownLetters(known, false));
  }

  @Test
  void each_letter_it_lacks_becomes_one_mark() {
    assertThat(KnownLetters.of("aスb🥄c")).isEqualTo(new KnownLetters("a□b□c", true));
  }

  @Test
  void what_shows_nothing_by_itself_needs_no_mark() {
    assertThat(KnownLetters.of("a\u200db\ufe0f").marked()).isFalse();
  }

  @Test
  void the_mark_itself_can_be_set() {
    assertThat(Typeface.has(KnownLetters.MARK.codePointAt(0))).isTrue();
  }
}
