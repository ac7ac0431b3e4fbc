package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.measure.UnitSystem;

/**
 * Upper bounds of what a walk asks for: prompts answered as they ask, a row each, and keystrokes.
 * Before rows stood in the prompts it was 237, 219, 27 and 16 lines.
 */
class CountedWalksTest {
  @Test
  void the_boat_of_15_ft_8_in_takes_half_of_90_questions_and_the_demo_boat_few_more() {
    assertAtMost(CountedWalks.rows(Sheet.WALK, CountedWalks.longBench()), 52, 1050);
    assertAtMost(CountedWalks.rows(Sheet.WALK, Sheet.of(CountedWalks.DEMO, 1)), 59, 1430);
  }

  @Test
  void whoever_types_one_value_a_line_is_not_asked_twice() {
    assertAtMost(CountedWalks.one(Sheet.WALK, CountedWalks.longBench()), 200, 1050);
  }

  @Test
  void a_borrowed_boat_takes_the_dozen_questions_it_is_said_to_take_and_20_after_a_trial() {
    assertAtMost(CountedWalks.rows(Sheet.WALK, Sheet.borrowed(false)), 12, 200);
    Sheet longest =
        Sheet.borrowedAndTried()
            .with("short.seats", "4")
            .with("trial.people", "3")
            .with("trial.seat.3", "0")
            .with("trial.mass", "210");
    assertAtMost(CountedWalks.rows(Sheet.WALK, longest), 20, 200);
  }

  @Test
  void a_refit_takes_ten() {
    Walk knowing =
        Sheet.walk(
            Sheet.TODAY,
            new PreviousBoats(
                List.of(CountedWalks.longBench().boat().in(UnitSystem.FEET_INCHES_POUNDS))));
    assertAtMost(CountedWalks.rows(knowing, new Sheet(CountedWalks.REFIT)), 10, 100);
  }

  private static void assertAtMost(CountedWalks.Count count, int lines, int keys) {
    assertThat(count.lines()).isBetween(1, lines);
    assertThat(count.keys()).isBetween(1, keys);
  }
}
