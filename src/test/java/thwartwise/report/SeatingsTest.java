package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Place;

class SeatingsTest {
  private static final List<Place> PLACES =
      List.of(new Place("thwart", 1.7, 0.3, 0.4, 2), new Place("stern", 0.4, 0.3, 0.4, 1));

  @Test
  void two_people_sit_together_or_apart_and_never_two_where_one_fits() {
    assertThat(Seatings.of(2, PLACES))
        .containsExactly(List.of("thwart", "thwart"), List.of("thwart", "stern"));
  }

  @Test
  void nobody_sits_in_one_way_and_too_many_in_none() {
    assertThat(Seatings.of(0, PLACES)).containsExactly(List.of());
    assertThat(Seatings.of(4, PLACES)).isEmpty();
    assertThat(Seatings.of(1, List.of())).isEmpty();
  }

  @Test
  void an_excluded_seating_is_taken_out_in_whatever_order_it_names_people() {
    assertThat(Seatings.without(Seatings.of(2, PLACES), List.of(List.of("stern", "thwart"))))
        .containsExactly(List.of("thwart", "thwart"));
  }
}
