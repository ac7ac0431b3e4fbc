package thwartwise.picture;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LabelSpacingTest {
  @Test
  void labels_that_have_room_stay_where_they_are() {
    assertThat(LabelSpacing.moved(List.of(50.0, 10.0), 20, 0, 100)).containsExactly(50, 10);
  }

  @Test
  void labels_too_near_to_each_other_move_apart_in_their_order() {
    assertThat(LabelSpacing.moved(List.of(52.0, 50.0), 20, 0, 100)).containsExactly(70, 50);
  }

  @Test
  void labels_at_the_end_move_back() {
    assertThat(LabelSpacing.moved(List.of(95.0, 99.0, 120.0), 20, 0, 100))
        .containsExactly(60, 80, 100);
  }

  @Test
  void too_many_share_what_room_there_is() {
    assertThat(LabelSpacing.moved(List.of(5.0, 5.0, 5.0, 5.0, 5.0), 50, 0, 100))
        .containsExactly(0, 25, 50, 75, 100);
  }
}
