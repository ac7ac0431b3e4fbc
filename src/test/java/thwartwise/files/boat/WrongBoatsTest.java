package thwartwise.files.boat;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.json.UnusableInput;

/** Every way a boat file is refused, with the whole message. */
@Isolated("sets the locale of the process")
class WrongBoatsTest {
  static List<WrongBoats> cases() {
    return WrongBoats.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void a_wrong_file_is_refused_in_one_line_that_says_what_to_do(WrongBoats wrong) {
    assertThatThrownBy(() -> BoatFile.parse(wrong.json(), "soup.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(wrong.says());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void the_figures_of_a_message_are_the_same_in_a_country_with_other_digits(WrongBoats wrong) {
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThatThrownBy(() -> BoatFile.parse(wrong.json(), "soup.json")).hasMessage(wrong.says());
    } finally {
      Locale.setDefault(usual);
    }
  }

  @Test
  void the_table_was_read_and_no_message_runs_over_a_line() {
    assertThat(cases()).hasSizeGreaterThan(70);
    assertThat(cases()).allSatisfy(wrong -> assertThat(wrong.says()).isNotBlank());
  }
}
