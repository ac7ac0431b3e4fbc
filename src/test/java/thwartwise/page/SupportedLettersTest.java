package thwartwise.page;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.page.PdfPage.SupportedLetters;

class SupportedLettersTest {
  @Test
  void letters_the_type_has_stay_as_they_are() {
    String known = "Löffel Ложка κουτάλι שלום 80\u00a0kg, 0.31\u00a0m³ – “é”\n";
    assertThat(SupportedLetters.of(known)).isEqualTo(new SupportedLetters(known, false));
  }

  @Test
  void each_letter_it_lacks_becomes_one_mark() {
    assertThat(SupportedLetters.of("aスb🥄c")).isEqualTo(new SupportedLetters("a□b□c", true));
  }

  @Test
  void what_shows_nothing_by_itself_needs_no_mark() {
    assertThat(SupportedLetters.of("a\u200db\ufe0f").marked()).isFalse();
  }

  @Test
  void the_mark_itself_can_be_set() {
    assertThat(Typeface.has(SupportedLetters.MARK.codePointAt(0))).isTrue();
  }
}
