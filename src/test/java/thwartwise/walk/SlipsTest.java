package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.walk.engine.Reply;

/** The whole text of each refusal, where a slip of the tape or the pen is caught at once. */
class SlipsTest {
  private static final Sheet FULL = Sheet.full(true);
  private static final Sheet FEET = Sheet.full(false);
  private static final Sheet SMALL = Sheet.small();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          hull.length      | 4.5 km | 4500.00 m is not between 1.5 and 8 m, the length of any boat this is for. Did you mean 4.50 m?
          hull.length      | 366    | 366.00 m is not between 1.5 and 8 m, the length of any boat this is for. Did you mean 3.66 m?
          hull.length      | 2400   | 2400.00 m is not between 1.5 and 8 m, the length of any boat this is for. Did you mean 2.40 m?
          hull.length      | 1      | 1.00 m is not between 1.5 and 8 m, the length of any boat this is for. Measure it again.
          hull.length      | -2     | -2.00 m is not between 1.5 and 8 m, the length of any boat this is for. Measure it again.
          hull.thickness   | 6      | 6.00 m is not between 0.5 and 60 mm, the thickness of such shells. Did you mean 6 mm?
          hull.mass        | 0      | 0 kg is not between 8 and 800 kg, the mass of any hull this is for. Measure it again.
          hull.station.2.point.2.y | 1.3 | 1.30 m is not between 0 and 1.2 m, the half-breadths up to half the length. Measure it again.
          hull.station.2.point.2.z | 42  | 42.00 m is not between 0 and 1.5 m, the height of anything on such a hull. Did you mean 0.42 m?
          hull.station.2.point.2.z | 1.6 | 1.60 m is not between 0 and 1.5 m, the height of anything on such a hull. Measure it again.
          hull.station.2.x | 3       | 3.00 m is not between 0 and 2.5 m, the length overall and a hand's breadth. Measure it again.
          place.1.x        | 2.5     | 2.50 m is not between 0 and 2.4 m, the length of the hull. Measure it again.
          place.1.z        | 0       | 0.00 m is not between 0.01 and 1.5 m, the heights between the floor and any seat. Measure it again.
          place.1.people   | 0       | 0 is not between 1 and 8. Type a whole number in between.
          hull.stations    | 2       | 2 is not between 3 and 21. Type a whole number in between.
          hull.points      | 1       | 1 is not between 2 and 12. Type a whole number in between.
          finish           | no      | Then type list, and change with a number; or back; or stop to keep it all.
          name             | change me | understood
          name             | skip    | It cannot be left out: without it nothing can be worked out. Type stop to keep all answers and come back with it.
          name             | ~~      | Nothing was typed. Type a name of at most 30 characters.
          hull.length      | ~~      | Nothing was typed. Type a length such as 1.02 (metres), 102 cm or 3' 4 1/2".
          water            | sweet   | "sweet" is not one of these. Type one of: fresh, salt.
          """)
  void a_slip_is_refused_with_its_reason(String key, String typed, String reason) {
    Reply reply = Sheet.WALK.take(SMALL.upTo(key), typed);
    assertThat(reply instanceof Reply.Refused refused ? refused.reason() : "understood")
        .isEqualTo(reason);
  }

  @Test
  void an_opening_is_closed_by_a_thing_and_by_nothing_else() {
    assertThat(FULL.refused("opening.1.closedBy", "yes"))
        .isEqualTo("\"yes\" names nothing. Type what shuts it, such as bung; or no.");
    for (String none : new String[] {"", "no", "None", "nothing", "left open"}) {
      assertThat(FULL.accepted("opening.1.closedBy", none))
          .isEqualTo("Opening \"motor notch\", closed under way by: nothing");
      assertThat(FULL.with("opening.2.closedBy", none).boat().openings().get(1).closedBy())
          .isEmpty();
    }
    assertThat(FULL.accepted("opening.1.closedBy", "hatch lid"))
        .isEqualTo("Opening \"motor notch\", closed under way by: hatch lid");
  }

  @Test
  void a_bailer_holds_litres_or_there_is_none() {
    assertThat(SMALL.refused("bailer", "75"))
        .isEqualTo(
            "75 l is not between 0.2 and 30 l, the volume of bailers one person can"
                + " swing. Measure it again.");
    assertThat(SMALL.refused("bailer", "4000"))
        .isEqualTo(
            "4000 l is not between 0.2 and 30 l, the volume of bailers one person can"
                + " swing. Did you mean 4 l?");
    assertThat(SMALL.accepted("bailer", "no"))
        .isEqualTo("Bailer or bucket aboard, it holds: none aboard");
    assertThat(SMALL.with("bailer", "none").boat().bailer()).isEmpty();
    assertThat(SMALL.with("bailer", "5").boat().bailer()).hasValue(0.005);
  }

  @Test
  void feet_typed_as_inches_are_offered_as_feet() {
    assertThat(FEET.refused("hull.length", "12"))
        .isEqualTo(
            "1 ft 0 in is not between 5 and 26 ft, the length of any boat this is for."
                + " Did you mean 12 ft 0 in?");
  }

  @Test
  void pounds_typed_as_kilograms_are_offered_as_pounds() {
    assertThat(FULL.refused("person.1.mass", "209"))
        .isEqualTo(
            "209 kg is not between 8 and 200 kg, the mass of one person. Did you mean 94.8 kg?");
  }

  @Test
  void a_rail_below_the_chine_is_caught() {
    assertThat(FULL.refused("hull.station.2.point.3.z", "0.0100"))
        .isEqualTo(
            "Station 2 \"middle\": the rail (10 mm) is lower than the chine (12.7 mm)."
                + " Measure both up from the baseline, or go back and swap them.");
  }

  @Test
  void a_starboard_rail_below_the_chine_is_caught_on_its_own_side() {
    assertThat(FULL.refused("hull.station.1.starboard.3.z", "0.05"))
        .isEqualTo(
            "Station 1 \"transom\", starboard: the rail (50 mm) is lower than the chine (63.5 mm)."
                + " Measure both up from the baseline, or go back and swap them.");
  }

  @Test
  void a_station_that_is_not_forward_of_the_one_before_is_caught() {
    assertThat(SMALL.refused("hull.station.3.x", "1.2"))
        .isEqualTo(
            "Station 3 \"fore end\": the keel (1.20 m) is not forward of the keel of station 2"
                + " \"station 2\" (1.20 m). Measure both from the aft end, or go back.");
  }

  @Test
  void each_line_must_run_forward_by_itself() {
    assertThat(FULL.refused("hull.station.3.point.2.x", "1.8"))
        .isEqualTo(
            "Station 3 \"fore end\": the chine (1.80 m) is not forward of the chine of station 2"
                + " \"middle\" (1.829 m). Measure both from the aft end, or go back.");
  }

  @Test
  void a_plumb_station_must_be_forward_of_every_point_of_a_raked_one() {
    assertThat(FULL.refused("hull.station.2.x", "3 cm"))
        .isEqualTo(
            "Station 2 \"middle\": the keel (30 mm) is not forward of the keel of station 1"
                + " \"transom\" (50.8 mm). Measure both from the aft end, or go back.");
  }

  @Test
  void a_first_station_away_from_the_aft_end_is_caught() {
    assertThat(FULL.refused("hull.station.1.point.3.x", "3 cm"))
        .isEqualTo(
            "Station 1 \"transom\": no point of it lies at the aft end; the aftmost is 25.4 mm"
                + " forward. Measure from the aftmost point, or go back.");
  }

  @Test
  void a_last_station_short_of_the_fore_end_is_caught() {
    assertThat(SMALL.refused("hull.station.3.x", "2.2"))
        .isEqualTo(
            "Station 3 \"fore end\": it ends at 2.20 m, but the length overall is 2.40 m. The last"
                + " station stands at the fore end; if the length is wrong, type list, then change"
                + " and its number.");
  }

  @Test
  void a_chamber_that_ends_before_it_begins_is_caught() {
    assertThat(FULL.refused("chamber.2.x.to", "1.6"))
        .isEqualTo(
            "Chamber \"midships thwart\": it would run from 1.60 m to 1.60 m."
                + " The second must be the greater: type it again, or back.");
  }

  @Test
  void a_chamber_that_begins_where_the_hull_ends_is_caught() {
    assertThat(FULL.with("chamber.1.x.from", "3.6576").refused("chamber.1.x.to", "hull"))
        .isEqualTo(
            "Chamber \"fore locker\": it would run from 3.658 m to 3.658 m."
                + " The second must be the greater: type it again, or back.");
  }

  @Test
  void a_chamber_without_any_limit_is_caught() {
    Sheet unlimited = FULL.with("chamber.1.x.from", "hull");
    assertThat(unlimited.refused("chamber.1.z.to", "hull"))
        .isEqualTo(
            "Chamber \"fore locker\": without any limit it would be the whole inside of the boat."
                + " Type a height here, or go back and give another limit.");
  }

  @Test
  void chambers_that_overlap_are_caught_and_both_are_named() {
    Sheet overlapping = FULL.with("chamber.2.x.to", "3");
    assertThat(overlapping.refused("chamber.2.mirrored", "no"))
        .isEqualTo(
            "Chamber \"midships thwart\" overlaps chamber \"fore locker\"; the same space cannot"
                + " count twice. Go back and mend its limits, or type list, then change and a"
                + " number.");
  }

  @Test
  void chambers_that_share_a_bulkhead_do_not_overlap() {
    Sheet neighbours = FULL.with("chamber.2.x.to", "2.8448");
    assertThat(neighbours.accepted("chamber.2.mirrored", "no"))
        .isEqualTo("Chamber \"midships thwart\", has it a twin? no");
  }

  @Test
  void a_twin_across_the_middle_line_is_caught() {
    assertThat(FULL.refused("chamber.2.mirrored", "yes"))
        .isEqualTo(
            "Chamber \"midships thwart\": it reaches across the middle line, so a twin would lie"
                + " inside it. Answer no, or go back and limit it to one side.");
  }

  @Test
  void a_place_outside_the_boat_is_caught() {
    Sheet nearTheStem = FULL.with("place.2.x", "3.6").with("place.2.z", "0.36");
    assertThat(nearTheStem.refused("place.2.halfWidth", "0.3"))
        .isEqualTo(
            "Place \"stern seat\": 0.30 m out is outside the boat; the rail there is 58.9 mm out."
                + " Measure to the middle of the person, or go back and mend the place.");
  }

  @Test
  void a_place_takes_no_more_people_than_it_has_room_for() {
    assertThat(FULL.refused("person.2.place", "stern seat"))
        .isEqualTo(
            "The place \"stern seat\" takes 1, and 1 sit there already. Type another place.");
  }

  @ParameterizedTest
  @CsvSource({
    "hull.station.2.name, TRANSOM",
    "chamber.2.name, Fore Locker",
    "place.2.name, midships thwart",
    "kit.2.name, battery",
    "person.2.name, Helm"
  })
  void a_name_given_twice_is_caught(String key, String name) {
    assertThat(FULL.refused(key, name))
        .isEqualTo("\"" + name + "\" is already the name of another. Type another name.");
  }

  @Test
  void a_test_that_has_not_been_done_yet_is_refused() {
    assertThat(FULL.refused("chamber.1.test.date", "2026-05-10"))
        .isEqualTo("2026-05-10 has not come yet (today is 2026-05-09). Type the day it was done.");
  }

  @Test
  void a_test_older_than_twelve_months_is_kept_and_said_to_count_for_nothing() {
    assertThat(FULL.accepted("chamber.1.test.date", "2025-05-08"))
        .isEqualTo(
            "Chamber \"fore locker\", leak test done on: 2025-05-08"
                + " (older than twelve months: it counts for nothing until tested again)");
    assertThat(FULL.accepted("chamber.1.test.date", "2025-05-09"))
        .isEqualTo("Chamber \"fore locker\", leak test done on: 2025-05-09");
  }

  @Test
  void an_untested_chamber_is_said_to_count_for_nothing() {
    assertThat(FULL.accepted("chamber.2.seal", "claimed"))
        .isEqualTo(
            "Chamber \"midships thwart\", its seal is: claimed"
                + " (it counts for nothing until a leak test is recorded)");
  }

  @Test
  void loose_foam_is_said_to_count_for_nothing() {
    assertThat(FULL.accepted("chamber.3.fastened", "no"))
        .isEqualTo(
            "Chamber \"side foam\", is the foam fastened in? no (such foam counts for nothing)");
  }

  @Test
  void a_chamber_with_a_battery_is_said_never_to_count() {
    assertThat(FULL.refused("kit.1.in", "fore"))
        .isEqualTo(
            "In there \"battery\" costs all that it lifts: such a space never counts. Really?");
    assertThat(FULL.accepted("kit.1.in", "fore locker indeed"))
        .isEqualTo(
            "Kit \"battery\", stowed in which chamber: fore locker (a space that holds a battery"
                + " or a charger never counts: vent it, do not seal it)");
    assertThat(FULL.refused("kit.2.in", "fore"))
        .isEqualTo(
            "A motor hangs on the transom under way. Is it really stowed in \"fore locker\"?");
  }

  @Test
  void impossible_stuff_is_refused() {
    assertThat(FULL.refused("hull.density", "49"))
        .isEqualTo(
            "No hull is made of that: densities run from 50 (foam) to 8000 (steel) kg/m³."
                + " Type kilograms for each cubic metre.");
  }
}
