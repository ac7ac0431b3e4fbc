package thwartwise.plausibility;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.checks.Finding;
import thwartwise.checks.FindingText;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.sampleboats.BoatEdits;
import thwartwise.sampleboats.OrdinaryBoats;

/** A dinghy whose rails stand 0.60, 0.69, 0.73, 0.61, 0.38 and 0.03 m out, aft to forward. */
class OutlinePlausibilityTest {
  private static final Boat DINGHY = OrdinaryBoats.all().get(2);
  private static final int RAIL = 2;

  private static List<PlausibilityFinding> of(Boat boat) {
    Boat bare = boat.withPlaces(List.of()).withChambers(List.of());
    return OutlinePlausibility.of(
        BoatModel.of(bare, OrdinaryBoats.TODAY),
        new PlausibleLimits(RuleSetFile.cautiousDefault()));
  }

  private static Boat rail(int station, double half) {
    return BoatEdits.withPoint(DINGHY, station, RAIL, p -> Vector3.of(p.x(), half, p.z()));
  }

  /** Transom and second section changed places: 0.69, 0.60, 0.73. No curve shows it. */
  @Test
  void two_sections_that_changed_places_leave_a_waist_told_with_its_whole_text() {
    List<PlausibilityFinding> found =
        of(BoatEdits.withPoint(rail(0, 0.69), 1, RAIL, p -> Vector3.of(p.x(), 0.60, p.z())));
    assertThat(found).hasSize(1);
    Finding finding = found.get(0).finding();
    assertThat(found.get(0).id().text()).isEqualTo("station:aft");
    assertThat(FindingText.check(finding)).isEqualTo("station \"aft\", waist of the outline");
    assertThat(finding.value().orElseThrow()).isEqualTo(0.60);
    assertThat(finding.limit()).isEqualTo(0.69);
    assertThat(FindingText.note(finding))
        .isEqualTo(
            "rail, half-breadth: the boat is broader aft and forward of it. Did two sections change"
                + " places? Measure it again, and those next to it");
    assertThat(finding.source())
        .isEqualTo(
            "no small boat narrows and broadens again along its length; the tape and an uneven"
                + " build may be off by as much (judgement)");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.565, 0.60, 0.69, 0.72})
  void an_outline_without_a_waist_deeper_than_the_tape_is_not_doubted(double aft) {
    assertThat(of(rail(1, aft))).isEmpty();
  }

  @Test
  void a_waist_is_found_as_soon_as_it_is_deeper() {
    assertThat(of(rail(1, 0.555))).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.005, 0, 0.02})
  void the_lowest_point_may_be_off_by_what_the_tape_is(double keel) {
    assertThat(of(keel(keel))).isEmpty();
  }

  @Test
  void a_height_with_a_wrong_sign_is_told_with_its_whole_text() {
    List<PlausibilityFinding> found = of(keel(-0.02));
    assertThat(found).hasSize(1);
    Finding finding = found.get(0).finding();
    assertThat(found.get(0).id().text()).isEqualTo("lowest-point");
    assertThat(FindingText.check(finding)).isEqualTo("height of the lowest point of the bottom");
    assertThat(finding.value().orElseThrow()).isEqualTo(-0.02);
    assertThat(finding.limit()).isEqualTo(-0.005);
    assertThat(FindingText.note(finding))
        .isEqualTo(
            "heights are measured up from the lowest point, so that one is zero: was a height given"
                + " a wrong sign, or left out?");
  }

  /** The keel of the middle station, and of its neighbours where it would rise above them. */
  private static Boat keel(double height) {
    Boat boat = DINGHY;
    for (int i = 1; i <= 3; i++) {
      double z = Math.max(height, i == 2 ? height : 0.03);
      boat = BoatEdits.withPoint(boat, i, 0, p -> Vector3.of(p.x(), 0, z));
    }
    return boat;
  }
}
