package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.boat.SeatPositions;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.files.report.OldNames;
import thwartwise.geometry.Span;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;

/** People on seats along the sides of a box, against the formula of the wall-sided. */
class SideSeatsTest {
  private static final Place PORT =
      new Place("port bench", new Span(1, 2), new Span(0.35, 0.45), 0.25, 2, Posture.SITTING);
  private static final Place STARBOARD =
      new Place(
          "starboard bench", new Span(1, 2), new Span(-0.45, -0.35), 0.25, 2, Posture.SITTING);

  // DERIVED: hull 120 kg, G 0.2 m up; two of 20 kg upright on a seat at 0.25 m, 0.45 m out to port.
  @Test
  void two_on_the_port_bench_heel_a_box_to_port_as_on_paper() {
    assertThat(heel(people(PORT, 20, 20)))
        .isCloseTo(-OnPaper.heel(120, 40, 0.45, 0.25), within(1e-6));
    assertThat(heel(people(STARBOARD, 20, 20)))
        .isCloseTo(OnPaper.heel(120, 40, 0.45, 0.25), within(1e-6));
  }

  // Three fifths of the way to port is 0.27 m, farther in than the bench: they stay right out, and
  // they come no farther to starboard than the inner end of their bench.
  @Test
  void people_on_a_port_bench_move_between_its_ends() {
    Body body = people(PORT, 20).get(0);
    assertThat(body.y()).isEqualTo(0.45);
    assertThat(body.toSide(1, 0.6).y()).isEqualTo(0.45);
    assertThat(body.at(0.40).toSide(1, 0.6).y()).isEqualTo(0.40);
    assertThat(body.toSide(-1, 0.6).y()).isEqualTo(0.35);
    assertThat(body.hardToSide(1).y()).isEqualTo(0.45);
    assertThat(body.hardToSide(-1).y()).isEqualTo(0.35);
  }

  @Test
  void three_fifths_of_a_wide_side_seat_lie_where_the_share_says() {
    Place wide = new Place("deck", new Span(1, 1), new Span(0.1, 0.6), 0.25, 1, Posture.SITTING);
    Body in = people(wide, 20).get(0).at(0.1);
    assertThat(in.toSide(1, 0.6).y()).isCloseTo(0.36, within(1e-12));
  }

  @Test
  void people_about_the_middle_line_move_as_far_over_it_as_their_seat_allows() {
    Place thwart = new Place("thwart", 1.5, 0.25, 0.4, 1);
    Body body = people(thwart, 20).get(0);
    assertThat(body.toSide(1, 0.6).y()).isEqualTo(0.6 * 0.4);
    assertThat(body.toSide(-1, 0.6).y()).isEqualTo(-0.6 * 0.4);
    Body narrow = people(new Place("thwart", 1.5, 0.25, 0.05, 1), 20).get(0);
    assertThat(narrow.hardToSide(-1).y()).isEqualTo(-0.15);
  }

  // Everyone hard to port: two right out on the port bench, one at the inner end of the other. A
  // move to starboard is not its mirror image.
  @Test
  void a_crew_on_one_side_is_moved_to_either_side() {
    List<Body> three = new ArrayList<>(people(PORT, 20, 20));
    three.addAll(people(STARBOARD, 20));
    BoxBoat boat = OnPaper.boat(120).place(PORT).place(STARBOARD);
    List<LoadedBoat> ways =
        PeopleMoves.everyone(LoadedBoat.of(boat.model(), three), 1, Act.EVERYONE_HARD_TO_THE_SIDE);
    assertThat(ways).hasSize(2);
    assertThat(ways.get(0).people()).extracting(Body::y).containsExactly(0.45, 0.45, -0.35);
    assertThat(ways.get(1).people()).extracting(Body::y).containsExactly(0.35, 0.35, -0.45);
    assertThat(
            PeopleMoves.everyone(
                LoadedBoat.of(OnPaper.boat(120).model(), three), 1, Act.EVERYONE_HARD_TO_THE_SIDE))
        .hasSize(2);
  }

  // Stiff 0.30 sitting, 0.45 kneeling, 1.0 m standing above what is under them (IMO Res. A.749(18)
  // 3.5.2.7, READ; kneeling judgement); upright where they are carried.
  @Test
  void people_kneel_and_stand_on_places_where_that_is_what_they_do() {
    assertThat(on(Posture.SITTING).stiff().centreHeight()).isCloseTo(0.55, within(1e-12));
    assertThat(on(Posture.KNEELING).stiff().centreHeight()).isCloseTo(0.70, within(1e-12));
    assertThat(on(Posture.STANDING).stiff().centreHeight()).isCloseTo(1.25, within(1e-12));
    assertThat(on(Posture.SITTING).centreHeight()).isCloseTo(0.25, within(1e-12));
    assertThat(on(Posture.KNEELING).centreHeight()).isCloseTo(0.40, within(1e-12));
    assertThat(on(Posture.STANDING).centreHeight()).isCloseTo(1.25, within(1e-12));
  }

  private static Body on(Posture posture) {
    Place place = new Place("place", new Span(1, 1), new Span(-0.1, 0.1), 0.25, 1, posture);
    return people(place, 80).get(0);
  }

  private static double heel(List<Body> people) {
    LoadedBoat trial =
        LoadedBoat.of(
            OnPaper.boat(120).place(PORT).place(STARBOARD).model(),
            people,
            OldNames.loadCase("on paper"));
    return trial.atRest().worst().orElseThrow().heel();
  }

  private static List<Body> people(Place place, double... masses) {
    List<Body> people = new ArrayList<>();
    var spots = SeatPositions.of(place, masses.length, Packing.SPREAD);
    for (int i = 0; i < masses.length; i++) {
      people.add(Body.at("crew " + i, masses[i], place, spots.get(i), 0.02));
    }
    return people;
  }
}
