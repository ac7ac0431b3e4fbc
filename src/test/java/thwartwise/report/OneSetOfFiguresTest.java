package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.sampleboats.OrdinaryBoats;

/**
 * Page, card, screen, {@code today} and {@code seats} tell the same figures of a boat. A few of the
 * quickest here; {@link OneSetOfFigures} asks thirty.
 */
class OneSetOfFiguresTest {
  @ParameterizedTest
  @CsvSource({"16 ft canoe, true", "14 ft pulling boat, false"})
  void page_card_screen_today_and_seats_agree_to_the_kilogram(String name, boolean seats) {
    Boat boat =
        OrdinaryBoats.all().stream().filter(b -> b.name().equals(name)).findFirst().orElseThrow();
    assertThat(OneSetOfFigures.contradictions(boat, seats)).isEmpty();
  }
}
