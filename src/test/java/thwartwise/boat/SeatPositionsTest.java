package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Place.Posture;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

class SeatPositionsTest {
  private static final Span MIDDLE = new Span(-0.4, 0.4);

  @Test
  void people_on_a_thwart_sit_in_lanes_of_equal_width_about_the_middle_line() {
    Place thwart = new Place("thwart", 1.7, 0.25, 0.4, 2);
    assertThat(SeatPositions.of(thwart, 1, Packing.SPREAD)).containsExactly(at(1.7, 0));
    assertThat(SeatPositions.of(thwart, 2, Packing.SPREAD))
        .containsExactly(at(1.7, -0.2), at(1.7, 0.2));
    for (Packing packing : Packing.values()) {
      assertThat(SeatPositions.of(thwart, 2, packing))
          .isEqualTo(SeatPositions.of(thwart, 2, Packing.SPREAD));
    }
    assertThat(Packing.of(List.of(thwart))).containsExactly(Packing.SPREAD);
  }

  // 1.8 m hold two lanes of 0.9 m, or two people a seat of 0.45 m apart at one end.
  @Test
  void people_on_a_side_bench_sit_along_it_and_right_out() {
    Place port = bench(new Span(0.6, 2.4), new Span(0.35, 0.45));
    same(SeatPositions.of(port, 2, Packing.SPREAD), at(1.05, 0.45), at(1.95, 0.45));
    same(SeatPositions.of(port, 2, Packing.AFT), at(0.6, 0.45), at(1.05, 0.45));
    same(SeatPositions.of(port, 2, Packing.FORE), at(1.95, 0.45), at(2.4, 0.45));
    Place starboard = bench(new Span(0.6, 2.4), new Span(-0.45, -0.35));
    same(SeatPositions.of(starboard, 1, Packing.AFT), at(0.6, -0.45));
    assertThat(Packing.of(List.of(port))).containsExactly(Packing.values());
  }

  @Test
  void a_bench_too_short_for_so_many_is_sat_on_from_end_to_end() {
    Place port = bench(new Span(1, 1.4), new Span(0.35, 0.40));
    for (Packing packing : List.of(Packing.AFT, Packing.FORE)) {
      same(SeatPositions.of(port, 3, packing), at(1, 0.40), at(1.2, 0.40), at(1.4, 0.40));
    }
  }

  // 0.8 m across hold two a seat apart; three people fill one row and begin another.
  @Test
  void a_cockpit_packed_to_one_end_is_sat_in_abreast() {
    Place cockpit = bench(new Span(1, 2.5), MIDDLE);
    same(SeatPositions.of(cockpit, 3, Packing.AFT), at(1, -0.2), at(1, 0.2), at(1.45, 0));
    same(SeatPositions.of(cockpit, 3, Packing.FORE), at(2.05, 0), at(2.5, -0.2), at(2.5, 0.2));
    same(SeatPositions.of(cockpit, 3, Packing.SPREAD), at(1.25, 0), at(1.75, 0), at(2.25, 0));
  }

  @Test
  void somebody_alone_on_a_bow_seat_sits_at_either_end_of_its_usable_part() {
    Place bow = bench(new Span(2.4, 2.8), new Span(-0.3, 0.3));
    same(SeatPositions.of(bow, 1, Packing.AFT), at(2.4, 0));
    same(SeatPositions.of(bow, 1, Packing.FORE), at(2.8, 0));
  }

  @Test
  void one_spot_to_one_side_holds_people_from_its_outer_end_inward() {
    Place port = bench(new Span(1, 1), new Span(0.1, 0.6));
    same(SeatPositions.of(port, 2, Packing.SPREAD), at(1, 0.15), at(1, 0.6));
  }

  @Test
  void everybody_is_on_the_place_however_many_there_are() {
    for (Place place :
        List.of(
            bench(new Span(0.6, 2.4), new Span(0.1, 0.6)),
            bench(new Span(1, 1.1), new Span(-0.7, 0.7)),
            bench(new Span(1, 2.5), new Span(-0.6, -0.4)))) {
      for (int people = 0; people <= 8; people++) {
        for (Packing packing : Packing.values()) {
          List<Vector3> all = SeatPositions.of(place, people, packing);
          assertThat(all).hasSize(people).doesNotHaveDuplicates();
          assertThat(all)
              .allMatch(p -> p.x() >= place.along().from() - 1e-9)
              .allMatch(p -> p.x() <= place.along().to() + 1e-9)
              .allMatch(p -> p.y() >= place.across().from() - 1e-9)
              .allMatch(p -> p.y() <= place.across().to() + 1e-9);
        }
      }
    }
  }

  private static Place bench(Span along, Span across) {
    return new Place("bench", along, across, 0.25, 4, Posture.SITTING);
  }

  private static Vector3 at(double x, double y) {
    return Vector3.of(x, y, 0.25);
  }

  private static void same(List<Vector3> found, Vector3... wanted) {
    assertThat(found).hasSize(wanted.length);
    for (int i = 0; i < wanted.length; i++) {
      assertThat(found.get(i).minus(wanted[i]).norm()).as("%s", found).isCloseTo(0, within(1e-9));
    }
  }
}
