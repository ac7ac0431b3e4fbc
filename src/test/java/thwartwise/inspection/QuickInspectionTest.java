package thwartwise.inspection;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.rules.RuleSet;

/** Boats like a shoe box, 3 m by 1.2 m and 0.5 m deep: 3.6 kg of water a millimetre. */
class QuickInspectionTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  private static BoxBoat box(double mass) {
    return BoxBoat.of(3, 1.2, 0.5).hull(mass, 0.2).weightlessShell();
  }

  private static QuickInspection look(Boat boat) {
    return QuickInspection.of(boat, RULES, BoxBoat.TODAY).orElseThrow();
  }

  private static QuickInspection.Carried carried(BoxBoat boat) {
    return look(boat.boat()).carried().orElseThrow();
  }

  // 0.5 m less 60 kg / 3600 kg a metre.
  @Test
  void before_a_place_is_known_only_freeboard_can_be_told() {
    QuickInspection look = look(box(60).boat());

    assertThat(look.freeboard()).isCloseTo(0.5 - 60 / 3600.0, within(1e-6));
    assertThat(look.carried()).isEmpty();
  }

  // Nobody can leave the middle line, so the rest decides: 1.05 (m + 95 n) / 3600 may leave
  // 0.20 + 0.02 m of 0.50, m + 95 n <= 960. 700 kg leave two, 775 kg one, 870 kg none.
  @Test
  void adults_are_counted_after_the_allowance() {
    assertThat(carried(box(700).place("thwart", 1.5, 0.25, 0, 4)).dry()).isEqualTo(2);
    assertThat(carried(box(775).place("thwart", 1.5, 0.25, 0, 4)).dry()).isEqualTo(1);
    assertThat(carried(box(870).place("thwart", 1.5, 0.25, 0, 4)).dry()).isZero();
  }

  // A load of 700 kg leaves two adults amidships. At the very stern two put its corner
  // 190 kg × 1.4 m × 1.5 m / (3600 kg/m × 3² m² / 12) = 0.15 m lower, more than is left.
  @Test
  void a_seat_at_the_stern_that_comes_first_keeps_nobody_from_the_middle() {
    BoxBoat boat = box(700).place("stern seat", 0.1, 0.25, 0, 4).place("thwart", 1.5, 0.25, 0, 4);

    assertThat(carried(boat).dry()).isEqualTo(2);
  }

  @Test
  void nobody_is_counted_beyond_the_room_there_is() {
    assertThat(carried(box(300).place("thwart", 1.5, 0.25, 0, 1)).dry()).isEqualTo(1);
  }

  // A shell that lifts nothing sinks; 420 litres in either end hold it up when one is lost.
  @Test
  void what_is_not_proven_lifts_nobody() {
    BoxBoat none = box(60).place("thwart", 1.5, 0.25, 0, 2);
    BoxBoat claimed =
        box(60)
            .place("thwart", 1.5, 0.25, 0, 2)
            .claimed("stern tank", new Span(0, 0.7))
            .claimed("bow tank", new Span(2.3, 3));
    BoxBoat oneProven =
        box(60).place("thwart", 1.5, 0.25, 0, 2).proven("stern tank", new Span(0, 0.7));
    BoxBoat proven =
        box(60)
            .place("thwart", 1.5, 0.25, 0, 2)
            .proven("stern tank", new Span(0, 0.7))
            .proven("bow tank", new Span(2.3, 3));

    assertThat(carried(none).swamped()).isZero();
    assertThat(carried(claimed).swamped()).isZero();
    assertThat(carried(oneProven).swamped()).isZero();
    assertThat(carried(proven).swamped()).isEqualTo(2);
  }

  // 3600 kg fill it to the rail.
  @Test
  void a_boat_that_finds_no_rest_says_nothing() {
    assertThat(QuickInspection.of(box(3600 * 0.5 + 1).boat(), RULES, BoxBoat.TODAY)).isEmpty();
  }

  @Test
  void a_boat_that_contradicts_itself_says_nothing() {
    assertThat(
            QuickInspection.of(box(60).place("thwart", 9, 0.25, 0, 1).boat(), RULES, BoxBoat.TODAY))
        .isEmpty();
  }
}
