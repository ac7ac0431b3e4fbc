package thwartwise.files.boat;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Chamber.Twin;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Cleat;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements.Skeg;
import thwartwise.hull.Material;
import thwartwise.measure.UnitSystem;
import thwartwise.report.AssumptionWords;

@Isolated("sets the locale of the process")
class BoatFileTest {
  private final Boat boat = parse(WrongBoats.goodFile());

  @Test
  void every_measurement_arrives_where_it_belongs() {
    assertThat(boat.name()).isEqualTo("Soup Ladle");
    assertThat(boat.water()).isEqualTo(Water.FRESH);
    assertThat(boat.hull().mass()).isEqualTo(61);
    assertThat(boat.hull().centre()).contains(Vector3.of(1.70, 0, 0.21));
    assertThat(boat.hull().material()).contains(Material.PLYWOOD);
    assertThat(boat.hull().density()).isEqualTo(750);
    assertThat(boat.hull().thickness()).isEqualTo(0.006);
    assertThat(boat.hull().floor()).isEqualTo(0.03);
    assertThat(boat.hull().decked()).containsExactly(new Span(2.75, 3.60));
    assertThat(boat.hull().stations()).hasSize(3);
    assertThat(boat.hull().stations().get(1).portRail()).isEqualTo(Vector3.of(1.8, 0.7, 0.42));
    assertThat(boat.openings())
        .containsExactly(new Opening("transom cut-out", Vector3.of(0, 0, 0.38), 0.30, true));
    assertThat(boat.places())
        .containsExactly(
            new Place("midships thwart", 1.69, 0.28, 0.45, 2),
            new Place("stern seat", 0.45, 0.27, 0.40, 1));
    assertThat(boat.kit())
        .contains(
            new Kit(
                "battery",
                17.5,
                Vector3.of(0.95, 0, 0.12),
                Optional.of(0.009),
                true,
                Optional.empty()));
    assertThat(boat.aboard()).containsExactly(new Person("helm", 80, "stern seat", 0));
    assertThat(boat.propulsion()).isEqualTo(new Propulsion.NotStated());
  }

  @Test
  void a_place_may_be_a_stretch_along_one_side() {
    Boat aside =
        parse(
            changed(
                "\"name\": \"stern seat\", \"x\": 0.45, \"z\": 0.27, \"halfWidth\": 0.40,"
                    + " | \"name\": \"stern seat\", \"x\": [0.2, 0.9], \"y\": [-0.45, -0.3],"
                    + " \"posture\": \"kneeling\", \"z\": 0.27,"));
    assertThat(aside.places().get(1))
        .isEqualTo(
            new Place(
                "stern seat",
                new Span(0.2, 0.9),
                new Span(-0.45, -0.3),
                0.27,
                1,
                Posture.KNEELING));
    assertThat(parse(BoatFile.write(aside))).isEqualTo(aside);
  }

  @Test
  void a_seat_across_with_a_length_and_one_spot_to_one_side_read_back() {
    Boat both =
        parse(
            changed("\"x\": 1.69, \"z\": 0.28, | \"x\": [1.6, 1.8], \"z\": 0.28,")
                .replace("\"halfWidth\": 0.40", "\"y\": 0.4"));
    assertThat(both.places().get(0).along()).isEqualTo(new Span(1.6, 1.8));
    assertThat(both.places().get(0).across()).isEqualTo(new Span(-0.45, 0.45));
    assertThat(both.places().get(1).across()).isEqualTo(new Span(0.4, 0.4));
    assertThat(parse(BoatFile.write(both))).isEqualTo(both);
  }

  // Nobody said where the helm sits across: on a seat to one side that is right out.
  @Test
  void somebody_on_a_side_seat_who_says_no_more_sits_right_out() {
    String port = changed("\"halfWidth\": 0.40 | \"y\": [0.3, 0.45]");
    assertThat(parse(port.replace(", \"y\": 0.0 }", " }")).aboard())
        .containsExactly(new Person("helm", 80, "stern seat", 0.45));
    assertThat(parse(port.replace(", \"y\": 0.0 }", ", \"y\": 0.35, \"x\": 0.45 }")).aboard())
        .containsExactly(new Person("helm", 80, "stern seat", 0.35, Optional.of(0.45)));
  }

  @Test
  void a_skeg_arrives_on_the_middle_line_and_no_skeg_is_none() {
    assertThat(boat.hull().skeg()).isEmpty();
    assertThat(
            parse(
                    changed(
                        "\"floor\": 0.03, | \"floor\": 0.03, \"skeg\": { \"edge\": [ { \"x\": 0, \"z\": -0.1 },"
                            + " { \"x\": 1.2, \"z\": -0.02 } ], \"thickness\": 0.03 },"))
                .hull()
                .skeg())
        .contains(new Skeg(List.of(Vector3.of(0, 0, -0.1), Vector3.of(1.2, 0, -0.02)), 0.03));
  }

  @Test
  void chambers_arrive_with_their_seal_test_and_litres() {
    assertThat(boat.chambers().get(0).filling())
        .isEqualTo(
            new Filling.Air(
                Seal.PROVEN,
                Optional.of(
                    new SealTest(LocalDate.of(2026, 5, 2), "water poured in", 20, 0, "builder"))));
    assertThat(boat.chambers().get(1).measuredVolume()).contains(0.086);
    assertThat(boat.chambers().get(1).box().y()).isEqualTo(Span.ALL);
    assertThat(boat.chambers().get(2).filling()).isEqualTo(new Filling.Foam(true, true));
    assertThat(boat.chambers().get(2).mirrored()).isTrue();
  }

  @Test
  void how_deep_a_chamber_was_tested_and_when_it_was_repaired_arrive() {
    Boat tested =
        parse(
            changed(
                "\"by\": \"builder\" } | \"by\": \"builder\", \"head\": 0.42 },"
                    + " \"repaired\": \"2026-04-01\""));
    Filling.Air air = (Filling.Air) tested.chambers().get(0).filling();
    assertThat(air.test().orElseThrow().head()).contains(0.42);
    assertThat(air.repaired()).contains(LocalDate.of(2026, 4, 1));
    assertThat(air.repairedSinceTest()).isEmpty();
  }

  private static final String TWINS =
      "\"fastened\": true, \"mirrored\": true | \"fastened\": true, \"mirrored\": true, \"twin\": ";

  @Test
  void what_is_known_of_a_twin_by_itself_arrives_and_is_written_again() {
    for (String twin :
        List.of(
            "{ \"filling\": \"air\", \"seal\": \"claimed\" }",
            "{ \"kind\": \"closed-cell\", \"fastened\": false, \"litres\": 12.5 }",
            "{ \"litres\": 12.5 }")) {
      Boat twins = parse(changed(TWINS + twin));
      assertThat(twins.chambers().get(2).parts())
          .extracting(ChamberPart::name)
          .containsExactly("side foam, port", "side foam, starboard");
      assertThat(BoatFile.parse(BoatFile.write(twins), "again.json")).isEqualTo(twins);
    }
    assertThat(parse(changed(TWINS + "{ \"litres\": 12.5 }")).chambers().get(2).twin())
        .isEqualTo(new Twin(Optional.empty(), Optional.of(0.0125)));
    assertThat(
            parse(changed(TWINS + "{ \"filling\": \"air\", \"seal\": \"claimed\" }"))
                .chambers()
                .get(2)
                .parts()
                .get(1)
                .filling())
        .isEqualTo(new Filling.Air(Seal.CLAIMED, Optional.empty()));
    assertThat(boat.chambers()).allMatch(c -> c.twin().equals(Twin.LIKE_THE_DRAWN));
  }

  @Test
  void openings_arrive_with_what_shuts_them_and_where_they_lead() {
    Opening hatch =
        opening("\"width\": 0.30, \"closedBy\": \"hatch lid\", \"into\": \"fore locker\"");
    assertThat(hatch.closedBy()).contains("hatch lid");
    assertThat(hatch.into()).contains("fore locker");
    assertThat(hatch.diameter()).isEmpty();
    assertThat(hatch.floodsTheBoat()).isFalse();
  }

  @Test
  void a_round_hole_is_as_wide_as_its_diameter_unless_somebody_says_otherwise() {
    assertThat(opening("\"diameter\": 0.025").width()).isEqualTo(0.025);
    assertThat(opening("\"diameter\": 0.025").diameter()).contains(0.025);
    assertThat(opening("\"diameter\": 0.025").floodsTheBoat()).isTrue();
    assertThat(opening("\"diameter\": 0.31, \"width\": 0.3").width()).isEqualTo(0.3);
  }

  @Test
  void cleats_bailer_and_limber_holes_arrive() {
    Boat there =
        parse(
            changed(
                "\"aboard\": | \"cleats\": [{\"name\":\"ring\",\"x\":3.5,\"y\":0.1,\"z\":0.5}],"
                    + " \"bailer\": 8, \"aboard\":"));
    assertThat(there.cleats()).containsExactly(new Cleat("ring", Vector3.of(3.5, 0.1, 0.5)));
    assertThat(there.bailer()).contains(0.008);
    assertThat(parse(changed("\"litres\": 86 | \"limberHole\": true")).chambers())
        .extracting(Chamber::limberHole)
        .containsExactly(false, true, false);
  }

  @Test
  void what_the_crew_does_when_swamped_arrives_and_is_written_again() {
    Boat held = parse(changed("\"aboard\": | \"whenSwamped\": \"hold on to it\", \"aboard\":"));
    assertThat(held.whenSwamped()).contains(thwartwise.boat.CrewWhenSwamped.HOLD_ON);
    assertThat(BoatFile.write(held)).contains("\"whenSwamped\": \"hold on to it\"");
    assertThat(parse(BoatFile.write(held)).whenSwamped()).isEqualTo(held.whenSwamped());
    assertThat(held.withKit(held.kit()).whenSwamped()).isEqualTo(held.whenSwamped());
    assertThat(parse(changed("\"litres\": 86 | \"litres\": 86")).whenSwamped()).isEmpty();
  }

  @Test
  void the_units_it_was_measured_in_arrive_and_stay() {
    Boat feet = parse(changed("\"aboard\": | \"units\": \"feet, inches and pounds\", \"aboard\":"));
    assertThat(feet.units()).isEqualTo(UnitSystem.FEET_INCHES_POUNDS);
    assertThat(BoatFile.write(feet)).contains("\"units\": \"feet, inches and pounds\"");
    assertThat(parse(BoatFile.write(feet))).isEqualTo(feet);
    assertThat(feet.withKit(List.of()).withBailer(0.004).withHullMass(90).units())
        .isEqualTo(feet.units());
    Boat older = parse(changed("\"litres\": 86 | \"litres\": 86"));
    assertThat(older.units()).isEqualTo(UnitSystem.METRIC);
    assertThat(feet.in(UnitSystem.METRIC)).isEqualTo(older);
    assertThat(BoatFile.write(older)).doesNotContain("\"units\"");
  }

  @Test
  void the_waters_arrive_and_a_force_is_the_upper_edge_of_its_wind() {
    Waters all =
        parse(
                changed(
                    "\"aboard\": | \"waters\": { \"waves\": 0.2, \"breaking\": false, \"force\": 3,"
                        + " \"current\": 0.4, \"weir\": true, \"wash\": false, \"celsius\": 12,"
                        + " \"offshore\": 80 }, \"aboard\":"))
            .waters();
    assertThat(all)
        .isEqualTo(
            new Waters(
                Optional.of(0.2),
                Optional.of(false),
                Optional.of(5.4),
                Optional.of(0.4),
                Optional.of(true),
                Optional.of(false),
                Optional.of(12.0),
                Optional.of(80.0)));
    assertThat(boat.waters()).isEqualTo(Waters.NOT_STATED);
  }

  @Test
  void a_file_without_the_later_keys_is_read_and_written_without_them() {
    assertThat(boat.cleats()).isEmpty();
    assertThat(boat.bailer()).isEmpty();
    assertThat(BoatFile.write(boat))
        .doesNotContain("cleats", "bailer", "limberHole", "closedBy", "into", "diameter", "waters");
  }

  private static Opening opening(String instead) {
    return parse(changed("\"width\": 0.30 | " + instead)).openings().get(0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"thickness\": 0.006, | ",
        "\"floor\": 0.03, | ",
        "\"centre\": { \"x\": 1.70, \"y\": 0.0, \"z\": 0.21 }, | ",
        "\"material\": \"plywood\" | \"density\": 731.5",
        "\"material\": \"plywood\" | \"material\": \"grp\", \"density\": 1550",
        "\"aboard\": | \"propulsion\": { \"kind\": \"outboard\", \"kilowatts\": 0.6 }, \"aboard\":",
        "\"aboard\": | \"propulsion\": { \"kind\": \"manual\" }, \"aboard\":",
        "\"aboard\": | \"measuredBy\": \"Ünal, O'Dell & Søn\", \"aboard\":",
        "\"width\": 0.30 | \"width\": 0.30, \"along\": \"fore-and-aft\"",
        "\"floor\": 0.03, | \"floor\": 0.03, \"skeg\": { \"edge\": [ { \"x\": 0, \"z\": -0.1 },"
            + " { \"x\": 0.7, \"z\": -0.08 }, { \"x\": 1.2, \"z\": -0.02 } ], \"thickness\": 0.03 },",
        "\"width\": 0.30 | \"diameter\": 0.025, \"closedBy\": \"bung\"",
        "\"width\": 0.30 | \"width\": 0.30, \"diameter\": 0.31, \"into\": \"fore locker\"",
        "\"width\": 0.30 | \"width\": 0.30, \"closedBy\": \"lid\", \"into\": \"fore locker\"",
        "\"aboard\": | \"cleats\": [{\"name\":\"ring\",\"x\":-0.1,\"y\":0.2,\"z\":0.5}], \"aboard\":",
        "\"aboard\": | \"bailer\": 8.7, \"aboard\":",
        "\"litres\": 86 | \"litres\": 86, \"limberHole\": true",
        "\"aboard\": | \"propulsion\": { \"kind\": \"sail\" }, \"aboard\":",
        "\"aboard\": | \"propulsion\": { \"kind\": \"tow\" }, \"aboard\":",
        "\"aboard\": | \"waters\": { \"waves\": 0.2, \"breaking\": false, \"wind\": 6.5, \"current\": 0.4,"
            + " \"weir\": true, \"wash\": true, \"celsius\": 12.5, \"offshore\": 80 }, \"aboard\":",
        "\"aboard\": | \"waters\": { \"force\": 3 }, \"aboard\":",
        "\"aboard\": | \"waters\": {}, \"aboard\":",
        "\"kind\": \"closed-cell\" | \"kind\": \"open-cell\"",
        "\"litres\": 86 | \"litres\": 86.123",
        "\"by\": \"builder\" | \"by\": \"builder\", \"head\": 0.42",
        "\"by\": \"builder\" } | \"by\": \"builder\" }, \"repaired\": \"2026-04-01\"",
        "\"litres\": 4, | \"litres\": 4, \"in\": \"fore locker\",",
        "\"seal\": \"claimed\" | \"seal\": \"open\"",
        "\"name\": \"middle\", | \"name\": \"middle\", \"starboard\": [{\"x\":1.8,\"y\":0,\"z\":0},"
            + "{\"x\":1.8,\"y\":-0.5,\"z\":0},{\"x\":1.8,\"y\":-0.71,\"z\":0.4}],",
      })
  void what_is_written_reads_back_as_the_same_boat(String change) {
    Boat changed = parse(changed(change));
    assertThat(parse(BoatFile.write(changed))).isEqualTo(changed);
    assertThat(BoatFile.write(parse(BoatFile.write(changed)))).isEqualTo(BoatFile.write(changed));
  }

  @Test
  void distances_to_starboard_may_be_written_with_either_sign() {
    String negative =
        changed(
            "\"name\": \"middle\", | \"name\": \"middle\", \"starboard\": [{\"x\":1.8,\"y\":0,\"z\":0},"
                + "{\"x\":1.8,\"y\":-0.5,\"z\":0},{\"x\":1.8,\"y\":-0.71,\"z\":0.4}],");
    Boat there = parse(negative);
    assertThat(parse(negative.replace("-0.5,", "0.5,").replace("-0.71,", "0.71,")))
        .isEqualTo(there);
    assertThat(there.hull().stations().get(1).starboardRail())
        .isEqualTo(Vector3.of(1.8, -0.71, 0.4));
  }

  @Test
  void a_starboard_side_like_the_port_side_is_no_side_of_its_own() {
    Boat there =
        parse(
            changed(
                "\"name\": \"middle\", | \"name\": \"middle\", \"starboard\": [{\"x\":1.8,\"y\":0,\"z\":0},"
                    + "{\"x\":1.8,\"y\":-0.55,\"z\":0},{\"x\":1.8,\"y\":-0.7,\"z\":0.42}],"));
    assertThat(there).isEqualTo(boat);
    assertThat(BoatFile.write(there)).doesNotContain("starboard");
  }

  @Test
  void a_thickness_and_floor_left_out_are_taken_as_usual_and_said_to_be() {
    Boat bare = parse(changed("\"thickness\": 0.006, | ").replaceFirst("\"floor\": 0.03,", ""));
    assertThat(bare.hull().thickness()).isEqualTo(0.006);
    assertThat(bare.hull().floor()).isEqualTo(0.006);
    assertThat(AssumptionWords.of(bare))
        .containsExactly(
            "Shell thickness 6 mm: usual for plywood, not measured.",
            "Floor at 6 mm above the lowest point of the bottom: the shell itself, not measured.");
    assertThat(BoatFile.write(bare)).doesNotContain("thickness").doesNotContain("floor");
  }

  @Test
  void measured_values_are_no_assumptions() {
    assertThat(AssumptionWords.of(boat)).isEmpty();
  }

  @Test
  void an_opening_amidships_at_the_side_runs_along_the_boat() {
    List<Opening> openings =
        parse(changed("\"x\": 0.0, \"y\": 0.0, \"z\": 0.38 | \"x\": 1.8, \"y\": 0.6, \"z\": 0.3"))
            .openings();
    assertThat(openings.get(0).athwart()).isFalse();
  }

  @Test
  void an_opening_runs_across_near_the_middle_line_and_at_either_end() {
    var stations = boat.hull().stations();
    assertThat(OpeningCodec.usuallyAthwart(Vector3.of(1.8, -0.09, 0.3), stations)).isTrue();
    assertThat(OpeningCodec.usuallyAthwart(Vector3.of(0.17, 0.4, 0.3), stations)).isTrue();
    assertThat(OpeningCodec.usuallyAthwart(Vector3.of(3.45, 0.4, 0.3), stations)).isTrue();
    assertThat(OpeningCodec.usuallyAthwart(Vector3.of(3.40, 0.4, 0.3), stations)).isFalse();
  }

  @Test
  void a_measured_point_stands_on_one_line_of_the_file() {
    assertThat(BoatFile.write(boat).lines())
        .contains("          { \"x\": 1.8, \"y\": 0.55, \"z\": 0.0 },")
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
  }

  @Test
  void the_file_is_the_same_in_a_country_with_other_digits() {
    String here = BoatFile.write(boat);
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(BoatFile.write(boat)).isEqualTo(here);
      assertThat(parse(here)).isEqualTo(boat);
    } finally {
      Locale.setDefault(usual);
    }
  }

  private static Boat parse(String json) {
    return BoatFile.parse(json, "soup.json");
  }

  /** The good file with the piece before the bar replaced by the piece after it. */
  private static String changed(String change) {
    String[] parts = change.split("\\|");
    return new WrongBoats("", parts[0].strip(), parts[1].strip(), "").json();
  }
}
