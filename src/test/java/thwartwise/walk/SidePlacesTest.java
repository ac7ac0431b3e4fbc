package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.geometry.Span;
import thwartwise.report.AssumptionWords;
import thwartwise.walk.engine.Reply;

/** Seats along the sides and the people on them, as the walk asks for them. */
class SidePlacesTest {
  private static final Sheet SMALL = Sheet.small();
  private static final Sheet PORT =
      SMALL
          .with("place.1.name", "port side seat")
          .with("place.1.lies", "port")
          .with("place.1.x.from", "0.8")
          .with("place.1.x.to", "1.6")
          .with("place.1.y.in", "0.3")
          .with("place.1.y.out", "0.4")
          .with("place.1.people", "2")
          .with("person.1.any", "yes")
          .with("person.1.name", "helm")
          .with("person.1.mass", "80")
          .with("person.1.place", "port");

  @Test
  void a_bench_along_one_side_is_a_stretch_on_that_side() {
    assertThat(PORT.boat().places())
        .containsExactly(
            new Place(
                "port side seat",
                new Span(0.8, 1.6),
                new Span(0.3, 0.4),
                0.25,
                2,
                Posture.SITTING));
    Boat other =
        PORT.with("place.1.name", "bench")
            .with("place.1.lies", "starboard")
            .with("person.1.place", "bench")
            .boat();
    assertThat(other.places().get(0).across()).isEqualTo(new Span(-0.4, -0.3));
  }

  @Test
  void a_bow_seat_is_an_area_about_the_middle_line() {
    Boat boat =
        PORT.with("place.1.name", "bow seat")
            .with("person.1.place", "bow seat")
            .with("place.1.lies", "area")
            .with("place.1.halfWidth", "0.25")
            .boat();
    assertThat(boat.places().get(0).along()).isEqualTo(new Span(0.8, 1.6));
    assertThat(boat.places().get(0).across()).isEqualTo(new Span(-0.25, 0.25));
  }

  // Nothing is the flattering answer: Enter alone is refused.
  @Test
  void how_a_place_lies_must_be_said() {
    assertThat(SMALL.refused("place.1.lies", ""))
        .isEqualTo("Nothing was typed. Type one of: across, port, starboard, area.");
  }

  @Test
  void a_side_seat_said_to_lie_across_is_asked_about() {
    Reply.Refused asked = (Reply.Refused) Sheet.WALK.take(PORT.upTo("place.1.lies"), "across");
    assertThat(asked.reason())
        .isEqualTo(
            "\"port side seat\" is named for a side; people on a seat across the boat are counted"
                + " about the middle line.");
    assertThat(asked.meant()).hasValue("port");
    assertThat(asked.insisted()).hasValue("across indeed");
    Reply.Refused other = (Reply.Refused) Sheet.WALK.take(PORT.upTo("place.1.lies"), "starboard");
    assertThat(other.reason())
        .isEqualTo(
            "\"port side seat\" is named for a side; people on a seat to starboard are counted on"
                + " that side.");
  }

  @Test
  void a_bench_that_ends_before_it_begins_is_caught() {
    assertThat(PORT.refused("place.1.x.to", "0.7"))
        .isEqualTo(
            "Place \"port side seat\": it would run from 0.80 m to 0.70 m."
                + " The second must be the greater: type it again, or back.");
    assertThat(PORT.refused("place.1.y.out", "0.2"))
        .isEqualTo(
            "Place \"port side seat\": it would run from 0.30 m to 0.20 m."
                + " The second must be the greater: type it again, or back.");
  }

  // The rail of the small boat is 0.567 m out at 0.8 m and 0.5 m out at 1.6 m.
  @Test
  void a_bench_outside_the_rail_is_caught_at_its_narrower_end() {
    assertThat(PORT.refused("place.1.y.out", "0.55"))
        .isEqualTo(
            "Place \"port side seat\": 0.55 m out is outside the boat; the rail there is 0.50 m out."
                + " Measure to the middle of the person, or go back and mend the place.");
  }

  // The row of the table: "port of the middle [Enter: 0]" put somebody on a side seat amidships.
  @Test
  void enter_takes_the_outer_spot_of_a_side_seat() {
    assertThat(PORT.boat().aboard())
        .containsExactly(new Person("helm", 80, "port side seat", 0.4, Optional.empty()));
    assertThat(PORT.with("person.1.x", "1.2").with("person.1.y", "0.35").boat().aboard())
        .containsExactly(new Person("helm", 80, "port side seat", 0.35, Optional.of(1.2)));
    assertThat(PORT.refused("person.1.y", "0"))
        .startsWith("0.00 m is not between 0.3 and 0.4 m, the reach of that place.");
  }

  @Test
  void enter_takes_the_side_of_a_thwart_to_which_the_boat_leans_already() {
    Sheet thwart =
        SMALL
            .with("place.1.people", "2")
            .with("person.1.any", "yes")
            .with("person.1.name", "helm")
            .with("person.1.mass", "80")
            .with("person.1.place", "thwart")
            .with("person.1.y", "-0.2")
            .with("person.2.any", "yes")
            .with("person.2.name", "crew")
            .with("person.2.mass", "60")
            .with("person.2.place", "thwart");
    assertThat(thwart.boat().aboard().get(1).y()).isEqualTo(-0.4);
    assertThat(thwart.with("person.1.y", "0.1").boat().aboard().get(1).y()).isEqualTo(0.4);
  }

  @Test
  void what_people_do_on_a_deck_or_near_the_floor_is_asked() {
    Sheet deck = SMALL.with("place.1.name", "fore deck").with("place.1.posture", "standing");
    assertThat(deck.boat().places().get(0).posture()).isEqualTo(Posture.STANDING);
    Sheet floor = SMALL.with("place.1.z", "0.05").with("place.1.posture", "kneel");
    assertThat(floor.boat().places().get(0).posture()).isEqualTo(Posture.KNEELING);
    assertThat(deck.refused("place.1.posture", ""))
        .isEqualTo("Nothing was typed. Type one of: sitting, kneeling, standing.");
  }

  @Test
  void a_borrowed_boat_may_have_benches_along_both_sides() {
    Boat boat =
        Sheet.borrowed(true).with("short.seats", "sides").with("short.chamber.where", "bow").boat();
    assertThat(boat.places())
        .extracting(Place::name)
        .containsExactly("port bench", "starboard bench");
    Place port = boat.places().get(0);
    Place starboard = boat.places().get(1);
    assertThat(port.across().from()).isPositive();
    assertThat(starboard.across()).isEqualTo(port.across().mirrored());
    assertThat(port.along()).isEqualTo(new Span(0.4572, 2.54));
    assertThat(AssumptionWords.of(boat))
        .anyMatch(a -> a.startsWith("Seats: a bench along either side"));
  }
}
