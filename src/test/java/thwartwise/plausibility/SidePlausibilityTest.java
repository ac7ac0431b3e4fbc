package thwartwise.plausibility;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.checks.FindingText;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;

class SidePlausibilityTest {

  @Test
  void a_side_seat_without_a_side_falls_short_and_is_named() {
    List<PlausibilityFinding> found = doubts(new Place("port side seat", 1.2, 0.25, 0.4, 2));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).withholds()).isTrue();
    assertThat(found.get(0).id().text()).isEqualTo("place-side:port side seat");
    assertThat(FindingText.note(found.get(0).finding()))
        .isEqualTo(
            "boat file: place \"port side seat\" has no side; write from where to where people sit"
                + " as \"y\": [from, to], starboard with a minus, or give a seat across the boat"
                + " another name");
  }

  @Test
  void a_port_seat_to_starboard_falls_short() {
    assertThat(doubts(seat("Port bench", -0.45, -0.3)))
        .extracting(f -> FindingText.note(f.finding()))
        .singleElement()
        .asString()
        .startsWith("boat file: place \"Port bench\" does not lie to port;");
    assertThat(doubts(seat("right-hand bench", 0.3, 0.45))).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"LEFT bench", "side seat", "sidebench", "bench, stbd", "portside seat"})
  void every_usual_word_for_a_side_is_known(String name) {
    assertThat(doubts(new Place(name, 1.2, 0.25, 0.4, 2))).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"stern seat", "sport bench", "inside thwart", "report desk", "bright seat"})
  void names_that_only_hold_such_letters_are_left_alone(String name) {
    assertThat(doubts(new Place(name, 1.2, 0.25, 0.4, 2))).isEmpty();
  }

  @Test
  void a_place_on_the_side_it_is_named_for_is_left_alone() {
    assertThat(
            doubts(
                seat("port bench", 0.3, 0.45),
                seat("side seat", -0.45, -0.3),
                seat("starboard half of the thwart", -0.5, 0)))
        .isEmpty();
  }

  private static List<PlausibilityFinding> doubts(Place... places) {
    BoxBoat boat = BoxBoat.of(3, 1.2, 0.5);
    List.of(places).forEach(boat::place);
    return SidePlausibility.of(boat.model(), new PlausibleLimits(RuleSetFile.cautiousDefault()));
  }

  private static Place seat(String name, double from, double to) {
    return new Place(name, new Span(1, 1.9), new Span(from, to), 0.25, 2, Posture.SITTING);
  }
}
