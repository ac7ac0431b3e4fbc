package thwartwise.page;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FigureTextTest {
  @Test
  void people_are_counted_in_words() {
    assertThat(FigureText.people(0)).isEqualTo("nobody");
    assertThat(FigureText.people(1)).isEqualTo("one person");
    assertThat(FigureText.people(12)).isEqualTo("12 people");
    assertThat(FigureText.adults(1)).isEqualTo("one adult");
    assertThat(FigureText.adults(5)).isEqualTo("5 adults");
  }
}
