package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thwartwise.checks.FindingText;
import thwartwise.checks.Role;
import thwartwise.files.boat.BoatFile;

/** Each disturbance appears among the findings of the boat that comes with the program. */
class DemoBoatFindingsTest {
  private static final Report REPORT =
      InspectedBoats.underShipped(BoatFile.parse(json(), "the demo boat"));

  private static String json() {
    try (InputStream in =
        DemoBoatFindingsTest.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> checks(Role role) {
    return REPORT.findings().stream()
        .filter(f -> f.role() == role)
        .map(FindingText::check)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void what_limits_the_crew() {
    assertThat(checks(Role.LIMITS_CREW))
        .containsExactlyInAnyOrder(
            "freeboard at rest",
            "three fifths to one side",
            "three fifths to one side, freeboard left",
            "sitting stiff a little off the middle",
            "sitting stiff a little off the middle, freeboard left",
            "swamped, lift to spare",
            "swamped, stern bench box, port lost",
            "swamped, heel",
            "swamped, higher end above the water",
            "swamped, lower end under the water",
            "swamped, half the crew's weight to one side",
            "swamped, everyone a little off the middle");
  }

  @Test
  void what_forbids_an_act() {
    assertThat(checks(Role.FORBIDS_AN_ACT))
        .containsExactlyInAnyOrder(
            "everyone hard against one side",
            "everyone hard against one side, freeboard left",
            "one person hard against one side",
            "one person hard against one side, freeboard left",
            "one person standing",
            "one person standing, freeboard left",
            "one person suddenly to one side",
            "everyone suddenly to one side",
            "leaning out over the side",
            "leaning out over the side, freeboard left",
            "climbing in over the side",
            "climbing in over the side, freeboard left",
            "climbing in over the stern",
            "climbing in over the stern, freeboard left",
            "anchoring by the stern",
            "anchoring by the stern, freeboard left",
            "leaving the hatch of the bow locker open, lift to spare when swamped",
            "leaving the hatch of the bow locker open, out of upright when swamped",
            "launching without a look into the bow locker",
            "launching without a look into the bow locker, freeboard left",
            "launching without a look into the middle thwart box",
            "launching without a look into the middle thwart box, freeboard left",
            "launching without a look into the stern bench box",
            "launching without a look into the stern bench box, freeboard left");
  }

  @Test
  void what_is_for_the_reader_to_know() {
    assertThat(checks(Role.INFORMATION))
        .contains(
            "kneeling, three fifths to one side",
            "kneeling, three fifths to one side, freeboard left",
            "righting with everyone on the low side, work to flooding",
            "anchoring by the bow",
            "anchoring by the bow, freeboard left",
            "greatest pull at the stern cleat",
            "greatest pull at the stern cleat, out over the side",
            "greatest pull at the bow ring",
            "greatest pull at the bow ring, out over the side",
            "wind on the beam",
            "wind on the beam, freeboard left",
            "motor hard over",
            "motor hard over, freeboard left",
            "loose water, first edge under",
            "loose water, no longer comes back",
            "loose water in the bay aft of the middle thwart box, first edge under",
            "loose water in the bay aft of the middle thwart box, no longer comes back",
            "loose water in the bay between the middle thwart box and the bow locker, first edge under",
            "loose water in the bay between the middle thwart box and the bow locker, no longer comes back",
            "rain at the mooring",
            "drain in the transom without its bung",
            "swamped, bow locker lost, out of upright",
            "swamped, stern bench box, port lost, out of upright",
            "swamped, stern bench box, starboard lost, out of upright",
            "swamped, two largest lost, lift to spare",
            "swamped, two largest lost, out of upright",
            "swamped, everyone in the water holding one side",
            "swamped, lowest edge above the water for bailing",
            "swamped, bailing it out",
            "swamped and turned over, turning it back",
            "swamped, getting back in over the side",
            "swamped, getting back in over the stern",
            "swamped, getting back in over the bow");
  }

  @Test
  void every_finding_shows_a_number_or_says_why_there_is_none() {
    assertThat(REPORT.findings())
        .allSatisfy(
            f -> {
              assertThat(f.limit()).as(FindingText.check(f)).isFinite();
              f.value().ifPresent(v -> assertThat(v).as(FindingText.check(f)).isFinite());
              assertThat(f.value().isPresent() || !FindingText.note(f).isBlank())
                  .as(FindingText.check(f))
                  .isTrue();
              assertThat(FindingText.note(f)).as(FindingText.check(f)).doesNotContain("\n");
              assertThat(FindingText.condition(f)).as(FindingText.check(f)).doesNotContain("\n");
            });
  }
}
