package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Waters;

/** One question for sheltered water, a few more for any other. */
class WatersOfTheWalkTest {
  private static final Sheet SMALL = Sheet.small();

  @Test
  void sheltered_water_has_to_be_said_and_states_nothing() {
    assertThat(SMALL.boat().waters()).isEqualTo(Waters.NOT_STATED);
    assertThat(SMALL.refused("waters.sheltered", ""))
        .isEqualTo("Nothing was typed. Type yes or no.");
    assertThat(SMALL.accepted("waters.sheltered", "yes"))
        .isEqualTo("Only sheltered, warm water close to the shore? yes");
  }

  @Test
  void each_further_question_may_be_left_by_a_word_and_says_what_that_means() {
    Sheet open = SMALL.with("waters.sheltered", "no");
    assertThat(open.boat().waters()).isEqualTo(Waters.NOT_STATED);
    assertThat(open.refused("waters.weir", ""))
        .isEqualTo("Nothing was typed. Type yes or no, or sheltered.");
    assertThat(open.accepted("waters.weir", "sheltered"))
        .isEqualTo("A weir, sluice or fall within reach? taken as sheltered");
  }

  @Test
  void what_is_seen_from_the_bank_arrives_in_the_boat() {
    Sheet seen =
        SMALL
            .with("waters.sheltered", "no")
            .with("waters.waves", "20 cm")
            .with("waters.breaking", "no")
            .with("waters.wind", "3")
            .with("waters.current", "4")
            .with("waters.weir", "no")
            .with("waters.wash", "yes")
            .with("waters.celsius", "12.5")
            .with("waters.offshore", "120");
    assertThat(seen.boat().waters())
        .isEqualTo(
            new Waters(
                Optional.of(0.2),
                Optional.of(false),
                Optional.of(5.4),
                Optional.of(0.4),
                Optional.of(false),
                Optional.of(true),
                Optional.of(12.5),
                Optional.of(120.0)));
  }

  @Test
  void figures_no_water_has_are_refused() {
    Sheet seen = SMALL.with("waters.sheltered", "no");
    assertThat(seen.refused("waters.celsius", "59"))
        .isEqualTo("That is not between -2 and 40. Type a number in between.");
    assertThat(seen.refused("waters.wind", "13"))
        .isEqualTo("13 is not between 0 and 12. Type a whole number in between.");
    assertThat(seen.refused("waters.waves", "20"))
        .isEqualTo("20.00 m is not between 0 and 10 m, the height of waves. Measure it again.");
  }

  @Test
  void sail_and_tow_can_be_said() {
    assertThat(SMALL.with("propulsion", "sail").boat().propulsion())
        .isEqualTo(new Propulsion.Sail());
    assertThat(SMALL.with("propulsion", "tow").boat().propulsion()).isEqualTo(new Propulsion.Tow());
  }
}
