package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;

/** Names are what somebody typed: no comma, colon or semicolon in one means anything. */
class NamesWithPunctuationTest {
  private static final String PAGE = page();

  private static String page() {
    String json =
        SampleBoat.resource("files/soup-ladle.json")
            .replace("\"name\": \"helm\"", "\"name\": \"Ann; the helm\"")
            .replace("\"people\": 2", "\"people\": 1")
            .replaceFirst("(?s)\\{ \"name\": \"stern seat\"[^}]*\\}", "")
            .replaceFirst("(?s)\\},\\s*\\],\\s*\"kit\"", "} ], \"kit\"")
            .replace("\"place\": \"stern seat\"", "\"place\": \"midships thwart\"")
            .replace(
                "\"openings\": [",
                "\"openings\": [ { \"name\": \"locker, bow hatch\", \"x\": 2.75, \"y\": 0.0,"
                    + " \"z\": 0.2, \"width\": 0.2, \"into\": \"fore locker\","
                    + " \"closedBy\": \"hatch\" },");
    Boat boat = BoatFile.parse(json, "soup.json");
    return TextPage.of(
            SampleBoat.record(
                Inspection.of(boat, RuleSetFile.cautiousDefault(), LocalDate.of(2026, 6, 14))))
        .replace('\u00a0', ' ')
        .replaceAll("\\s+", " ");
  }

  @Test
  void a_hatch_with_a_comma_in_its_name_is_named_whole() {
    assertThat(PAGE)
        .contains("leaving the locker, bow hatch open")
        .doesNotContain("leaving the locker.", "leaving the locker:", "leaving the locker;");
  }

  @Test
  void a_person_with_a_semicolon_in_the_name_is_named_whole() {
    assertThat(PAGE)
        .contains("As loaded: Ann; the helm at midships thwart")
        .doesNotContain("As loaded: Ann:", "As loaded: Ann.");
  }
}
