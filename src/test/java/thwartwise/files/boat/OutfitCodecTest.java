package thwartwise.files.boat;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.AnchorBottom;
import thwartwise.boat.Outfit.Rowlocks;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.json.CanonicalNumbers;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;

/** Rowlocks, leaks and anchor line, to the file and back. */
class OutfitCodecTest {
  private static final String WITHOUT = WrongBoats.goodFile();

  private static final String ALL =
      "\"rowlocks\": [ { \"x\": 1.3 } ],"
          + " \"leaks\": [ { \"seam\": \"port chine\", \"litres\": 3, \"minutes\": 30 } ],"
          + " \"anchorLine\": 20, \"anchorDepth\": 3, \"anchorBottom\": \"sand or mud\"";

  private static String with(String keys) {
    return WITHOUT.replaceFirst("\\{", "{ " + keys + ",");
  }

  private static Boat read(String json) {
    return BoatFile.parse(json, "boat.json");
  }

  @Test
  void what_is_known_of_the_outfit_is_read_and_written_again() {
    Outfit outfit = read(BoatFile.write(read(with(ALL)))).outfit();
    assertThat(outfit.rowlocks()).containsExactly(new Rowlocks(1.3));
    assertThat(outfit.leaks()).containsExactly(new SeamLeak("port chine", 0.003, 1800));
    assertThat(outfit.anchorLine()).hasValue(20.0);
    assertThat(outfit.anchorDepth()).hasValue(3.0);
    assertThat(outfit.anchorBottom()).hasValue(AnchorBottom.SAND_OR_MUD);
  }

  private static final String STEERED =
      WITHOUT.replaceFirst("\"litres\": 4, ", "\"litres\": 4, \"workedFrom\": \"stern seat\", ");

  @Test
  void where_a_motor_is_worked_from_is_read_and_written_again() {
    assertThat(read(BoatFile.write(read(STEERED))).kit().get(1).workedFrom())
        .contains("stern seat");
    String schema = Layout.of(CanonicalNumbers.in(BoatSchema.tree()));
    assertThat(
            new SchemaCheck(JsonText.parse(schema, Location.whole("schema")))
                .faults(JsonText.parse(STEERED, Location.whole("boat.json"))))
        .isEmpty();
    assertThat(BoatFile.write(read(WITHOUT))).doesNotContain("workedFrom");
  }

  @Test
  void the_schema_takes_it() {
    String schema = Layout.of(CanonicalNumbers.in(BoatSchema.tree()));
    SchemaCheck check = new SchemaCheck(JsonText.parse(schema, Location.whole("schema")));
    assertThat(check.faults(JsonText.parse(with(ALL), Location.whole("boat.json")))).isEmpty();
    assertThat(
            check.faults(JsonText.parse(with("\"rowlocks\": [ {} ]"), Location.whole("boat.json"))))
        .isNotEmpty();
  }

  @Test
  void a_boat_of_which_it_is_not_known_is_written_as_before() {
    assertThat(read(WITHOUT).outfit()).isEqualTo(Outfit.NOT_STATED);
    assertThat(BoatFile.write(read(WITHOUT))).doesNotContain("rowlocks", "leaks", "anchor");
  }

  @Test
  void a_leak_without_its_time_is_refused() {
    assertThatThrownBy(
            () -> read(with("\"leaks\": [ { \"seam\": \"port chine\", \"litres\": 3 } ]")))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "boat.json: leak 1: the key \"minutes\" is missing. Write how long it came in, in minutes.");
  }

  @Test
  void centimetres_of_anchor_line_are_refused_with_what_was_probably_meant() {
    assertThatThrownBy(() -> read(with("\"anchorLine\": 2000")))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "boat.json: \"anchorLine\" is 2000 m, outside the believable 1 to 300 m for an anchor"
                + " line. If that was centimetres, write 20.");
  }
}
