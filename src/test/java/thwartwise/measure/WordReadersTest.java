package thwartwise.measure;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WordReadersTest {
  private static final DayReader DAYS = new DayReader(LocalDate.of(2026, 5, 9));
  private static final ChoiceReader<Integer> WATERS =
      ChoiceReader.of(1, "fresh", "lake").or(2, "salt", "sea").or(3, "Saltish");

  @ParameterizedTest
  @CsvSource({"y, true", "YES, true", "n, false", "No, false"})
  void yes_and_no_are_read(String typed, boolean meant) {
    assertThat(YesOrNo.read(typed)).isEqualTo(Reading.understood(meant, meant ? "yes" : "no"));
  }

  @Test
  void maybe_is_neither() {
    assertThat(YesOrNo.read("maybe").refusal())
        .hasValue("\"maybe\" is neither yes nor no. Type yes or no.");
  }

  @Test
  void a_count_is_read() {
    assertThat(NumberReader.whole(" 5 ")).isEqualTo(Reading.understood(5, "5"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-1", "1.5", "fife", "1e2", "9999999999", "٣"})
  void what_is_no_count_is_refused(String typed) {
    assertThat(NumberReader.whole(typed).refusal())
        .hasValue(
            PrintableText.excerpt(typed)
                + " is not a whole number. Type a whole number such as 5.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"12.5|12.5", "12,5|12.5", "1/2|0.5", "2 1/4|2.25", "900|900"})
  void a_figure_is_read(String typed, double value) {
    assertThat(NumberReader.figure(typed).as(v -> v == value))
        .isInstanceOf(Reading.Understood.class)
        .extracting(r -> ((Reading.Understood<Boolean>) r).value())
        .isEqualTo(true);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-1", "NaN", "1e400", "1/0", "1000001", "x"})
  void what_is_no_figure_is_refused(String typed) {
    assertThat(NumberReader.figure(typed).refusal())
        .hasValue(PrintableText.excerpt(typed) + " is not a number. Type a number such as 12.5.");
  }

  @Test
  void names_that_hold_a_comma_are_told_apart_by_semicolons() {
    ChoiceReader<Integer> sides =
        ChoiceReader.of(1, "side seat, port").or(2, "side seat, starboard");
    assertThat(sides.read("aft").refusal())
        .hasValue(
            "\"aft\" is not one of these. Type one of: side seat, port; side seat, starboard.");
    assertThat(WATERS.words()).isEqualTo("fresh, salt, Saltish");
  }

  @Test
  void a_day_is_read_year_first() {
    assertThat(DAYS.read("2026-05-02"))
        .isEqualTo(Reading.understood(LocalDate.of(2026, 5, 2), "2026-05-02"));
    assertThat(DAYS.read("Today"))
        .isEqualTo(Reading.understood(LocalDate.of(2026, 5, 9), "2026-05-09"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "5/2/26", "2026-13-01", "2026-02-30", "+12345-01-01", "tomorrow"})
  void what_is_no_day_is_refused(String typed) {
    assertThat(DAYS.read(typed).refusal())
        .hasValue(
            PrintableText.excerpt(typed)
                + " is not a day. Type year-month-day such as 2026-05-02, or today, yesterday, last"
                + " Saturday, 2 May 2026.");
  }

  @ParameterizedTest
  @CsvSource({
    "fresh, fresh",
    "FRESH, fresh",
    "f, fresh",
    "lake, fresh",
    "salt, salt",
    "salti, Saltish"
  })
  void a_choice_is_read_by_word_beginning_or_other_spelling(String typed, String word) {
    assertThat(((Reading.Understood<Integer>) WATERS.read(typed)).text()).isEqualTo(word);
  }

  @Test
  void a_beginning_of_two_choices_is_refused() {
    assertThat(WATERS.read("s").refusal())
        .hasValue("\"s\" is not one of these. Type one of: fresh, salt, Saltish.");
  }

  @Test
  void a_name_is_tidied() {
    assertThat(new NameReader(30).read("  fore \t locker "))
        .isEqualTo(Reading.understood("fore locker", "fore locker"));
  }

  @Test
  void a_name_that_would_command_the_terminal_is_refused() {
    assertThat(new NameReader(30).read("a\u001b[2Jb").refusal())
        .hasValue("\"a?[2Jb\" has signs in it that cannot be printed. Type it without them.");
  }

  @Test
  void a_name_without_a_letter_is_refused() {
    assertThat(new NameReader(30).read("--").refusal())
        .hasValue("\"--\" has no letter or figure in it. Type a name such as fore locker.");
  }

  @ParameterizedTest
  @ValueSource(ints = {31, 1_000_000})
  void a_long_name_is_refused(int length) {
    assertThat(new NameReader(30).read("a".repeat(length)).refusal())
        .hasValue(
            PrintableText.excerpt("a".repeat(length))
                + " is too long. Type at most 30 characters.");
  }
}
