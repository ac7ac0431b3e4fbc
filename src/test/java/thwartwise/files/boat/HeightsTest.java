package thwartwise.files.boat;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.geometry.Span;
import thwartwise.json.UnusableInput;

/** Boats measured down from a line stretched over them. */
class HeightsTest {
  private static final BigDecimal LINE = new BigDecimal("1.10");
  private static final Pattern ONE = Pattern.compile("(\"z\": |\"floor\": )(-?[0-9.]+)");
  private static final Pattern TWO = Pattern.compile("\"z\": \\[(-?[0-9.]+), (-?[0-9.]+)\\]");

  @Test
  void the_demo_boat_measured_down_from_a_line_is_the_same_boat() {
    String up = demo();
    Boat same = BoatFile.parse(down(up), "down.json");
    assertThat(same).isEqualTo(BoatFile.parse(up, "up.json"));
    assertThat(BoatFile.write(same)).doesNotContain("heights");
  }

  @Test
  void so_is_a_boat_with_a_skeg_a_measured_centre_and_a_starboard_side() {
    String up =
        WrongBoats.goodFile()
            .replace(
                "\"floor\": 0.03,",
                "\"floor\": 0.03, \"skeg\": { \"edge\": [ { \"x\": 0, \"z\": -0.10 },"
                    + " { \"x\": 1.2, \"z\": -0.02 } ], \"thickness\": 0.03 },")
            .replace(
                "\"name\": \"middle\",",
                "\"name\": \"middle\", \"starboard\": [ { \"x\": 1.8, \"y\": 0, \"z\": 0 },"
                    + " { \"x\": 1.8, \"y\": -0.5, \"z\": 0.01 },"
                    + " { \"x\": 1.8, \"y\": -0.71, \"z\": 0.4 } ],");
    Boat boat = BoatFile.parse(down(up), "down.json");
    assertThat(boat).isEqualTo(BoatFile.parse(up, "up.json"));
    assertThat(boat.hull().skeg().orElseThrow().edge().get(0).z()).isEqualTo(-0.10);
    assertThat(boat.hull().centre().orElseThrow().z()).isCloseTo(0.21, within(1e-9));
    assertThat(boat.chambers().get(0).box().z()).isEqualTo(new Span(0, 0.36));
  }

  @Test
  void up_from_the_bottom_is_the_usual_way_and_may_be_said() {
    String said = demo().replaceFirst("\\{", "{ \"heights\": \"up from the bottom\",");
    assertThat(BoatFile.parse(said, "said.json")).isEqualTo(BoatFile.parse(demo(), "up.json"));
  }

  @Test
  void another_way_is_refused() {
    refused(
        json -> json.replace("down from a line", "down from the line"),
        "soup.json: \"heights\" is \"down from the line\", wanted one of up from the bottom, down"
            + " from a line; the nearest is \"down from a line\". Write how heights were measured,"
            + " or leave \"heights\" out when it was up.");
  }

  @Test
  void a_misspelt_key_names_it() {
    refused(
        json -> json.replace("\"heights\"", "\"height\""),
        "soup.json: the key \"height\" is not known here; the nearest known one is \"heights\"."
            + " Correct it or take it out.");
  }

  @Test
  void a_distance_that_is_not_believed_is_named_as_it_was_typed() {
    refused(
        json -> json.replace("\"y\": 0.70, \"z\": 0.68", "\"y\": 0.70, \"z\": 68"),
        "soup.json: hull, station 2 \"middle\", point 3: \"z\" is 68 m, outside the believable -1 to"
            + " 3 m for a distance down from a line. If that was centimetres, write 0.68.");
    refused(
        json -> json.replace("\"z\": [0.82, 1.10]", "\"z\": [0.82, 11.0]"),
        "soup.json: chamber 2 \"midships thwart\", box: \"z\" is 11 m, outside the believable -1 to"
            + " 3 m for a distance down from a line. If that was centimetres, write 0.11.");
    refused(
        json -> json.replace("\"floor\": 1.07", "\"floor\": -7"),
        "soup.json: hull: \"floor\" is -7 m, outside the believable -1 to 3 m for a distance down"
            + " from a line. Measure z down from the line, in metres.");
  }

  @Test
  void what_is_no_number_is_told_as_in_any_other_file() {
    refused(
        json -> json.replace("\"y\": 0.70, \"z\": 0.68", "\"y\": 0.70, \"z\": \"0.68\""),
        "soup.json: hull, station 2 \"middle\", point 3: \"z\" is the text \"0.68\", wanted a number"
            + " (m). Write digits without quotes. (Heights here are up from the lowest point of the"
            + " bottom; the file measures down from a line, so take each from 1.1 m to find it.)");
  }

  @Test
  void a_height_found_wrong_later_says_how_to_find_it_in_the_file() {
    refused(
        json -> json.replace("\"y\": 0.55, \"z\": 1.10", "\"y\": 0.55, \"z\": 0.65"),
        "soup.json: hull, station 2 \"middle\": the rail (0.42 m) is lower than the chine (0.45 m)."
            + " Measure both up from the lowest point of the bottom, or swap them. (Heights here are"
            + " up from the lowest point of the bottom; the file measures down from a line, so take"
            + " each from 1.1 m to find it.)");
  }

  @Test
  void a_fault_that_is_none_of_a_height_is_told_plainly() {
    refused(
        json -> json.replace("\"mass\": 61.0", "\"mass\": -61.0"),
        "soup.json: hull: \"mass\" is -61 kg, outside the believable 1 to 2000 kg for a bare hull."
            + " Weigh the bare hull on bathroom scales, one end after the other, and write the sum"
            + " in kg.");
  }

  /** What somebody called a thing says nothing of what is wrong with it. */
  @Test
  void a_thing_named_like_a_height_has_no_height_wrong() {
    refused(
        json ->
            json.replaceFirst("\"kit\": \\[", "\"kit\": [ { \"name\": \"floor\", \"mass\": -2 },"),
        "soup.json: kit 1 \"floor\": \"mass\" is -2 kg, outside the believable 0.01 to 500 kg for a"
            + " thing carried. Weigh it on bathroom or kitchen scales and write kg.");
  }

  @Test
  void without_one_height_at_the_stations_the_ordinary_reader_speaks() {
    assertThatThrownBy(
            () ->
                BoatFile.parse(
                    "{ \"format\": \"thwartwise/boat/1\", \"heights\": \"down from a line\" }",
                    "soup.json"))
        .hasMessage("soup.json: the key \"name\" is missing. Write the name of the boat.");
  }

  private static void refused(UnaryOperator<String> change, String says) {
    String good = down(WrongBoats.goodFile());
    String wrong = change.apply(good);
    assertThat(wrong).isNotEqualTo(good);
    assertThatThrownBy(() -> BoatFile.parse(wrong, "soup.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(says);
  }

  /** The same file as somebody writes it who measures down from a line 1.10 m over the bottom. */
  private static String down(String up) {
    String turned = ONE.matcher(up).replaceAll(m -> m.group(1) + less(m, 2));
    turned = TWO.matcher(turned).replaceAll(m -> "\"z\": [" + less(m, 2) + ", " + less(m, 1) + "]");
    return turned.replaceFirst("\\{", "{ \"heights\": \"down from a line\",");
  }

  private static String less(MatchResult match, int group) {
    return LINE.subtract(new BigDecimal(match.group(group))).toPlainString();
  }

  private static String demo() {
    try (InputStream in = HeightsTest.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
