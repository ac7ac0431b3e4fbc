package thwartwise.crew;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LikelySeatingsTest {
  private static final Seating AFT = new Seating(List.of(2, 0));
  private static final Seating APART = new Seating(List.of(1, 1));
  private static final Seating FORE = new Seating(List.of(0, 2));

  private final LikelySeatings likely = new LikelySeatings();

  @Test
  void the_seating_that_carried_most_is_asked_first_and_none_is_left_out() {
    likely.remember(FORE);
    assertThat(likely.first(List.of(AFT, APART, FORE))).containsExactly(FORE, AFT, APART);
  }

  @Test
  void one_of_another_number_of_people_or_of_other_places_changes_nothing() {
    likely.remember(new Seating(List.of(1, 0)));
    assertThat(likely.first(List.of(AFT, APART))).containsExactly(AFT, APART);
    likely.remember(new Seating(List.of(0, 0, 2)));
    assertThat(likely.first(List.of(AFT, APART))).containsExactly(AFT, APART);
  }

  @Test
  void where_nobody_can_sit_there_is_nothing_to_sort() {
    assertThat(likely.first(List.of())).isEmpty();
  }
}
