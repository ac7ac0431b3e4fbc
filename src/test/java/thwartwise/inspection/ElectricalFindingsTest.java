package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Note;
import thwartwise.electrics.CircuitSums.Fault;
import thwartwise.files.boat.BoatFile;
import thwartwise.sampleboats.ElectricBoat;

/** What is stated of the wires and can burn or fall holds the boat; what nobody stated does not. */
class ElectricalFindingsTest {
  @Test
  void nothing_is_held_against_a_boat_whose_wires_are_in_order() {
    assertThat(ElectricalFindings.of(ElectricBoat.boat())).isEmpty();
    assertThat(ElectricalFindings.of(BoatFile.parse(ElectricBoat.WITHOUT, "boat.json"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"terminalsCovered\": true|\"terminalsCovered\": false|BATTERY_COVERED",
        "\"strapped\": true|\"strapped\": false|BATTERY_HELD",
        "\"panelFuse\": 5|\"panelFuse\": 0|PANEL_FUSED",
        "\"batteryFuse\": 5|\"batteryFuse\": 0|PANEL_FUSED"
      })
  void what_is_stated_as_wrong_holds_the_boat_back(String right, String wrong, CheckId check) {
    assertThat(ElectricalFindings.of(boat(right, wrong)))
        .hasSize(1)
        .allMatch(Finding::holdsBack)
        .allMatch(f -> f.question().check() == check);
  }

  @ParameterizedTest
  @CsvSource({
    "terminalsCovered, true",
    "strapped, true",
    "panelFuse, 5",
    "batteryFuse, 5",
    "batteryStaysOn, true"
  })
  void what_nobody_stated_is_left_to_the_page_of_the_wires(String key, String value) {
    String said = "\"" + key + "\": " + value;
    assertThat(ElectricBoat.JSON).contains(said);
    String json = ElectricBoat.JSON.replaceAll(",\\s*" + said, "");
    assertThat(json).doesNotContain(said);
    assertThat(ElectricalFindings.of(BoatFile.parse(json, "boat.json"))).isEmpty();
  }

  /**
   * The motor's wire of 10 mm² carries 60 A by the rule's table; the lamp's AWG 14 carries 10 A.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"fuse\": 60, |\"fuse\": 0, |NO_FUSE",
        "\"fuse\": 60, |\"fuse\": 150, |FUSE_OVER_WIRE",
        "\"mm2\": 10|\"mm2\": 2.5|FUSE_OVER_WIRE",
        "\"mm2\": 10|\"mm2\": 0.3|WIRE_TOO_THIN",
        "\"fuseAt\": 0.15|\"fuseAt\": 0.5|FUSE_TOO_FAR"
      })
  void a_wire_that_would_burn_names_the_gravest_of_what_is_wrong(
      String right, String wrong, Fault fault) {
    List<Finding> found = ElectricalFindings.of(boat(right, wrong));
    assertThat(found).hasSize(1).allMatch(Finding::holdsBack);
    assertThat(found.get(0).question().things()).containsExactly("motor");
    assertThat(found.get(0).note()).isEqualTo(new Note.UnguardedCircuit(fault));
  }

  @Test
  void a_battery_carried_ashore_is_held_against_nobody() {
    Boat bare = boat("\"terminalsCovered\": true", "\"terminalsCovered\": false");
    Boat ashore =
        bare.withKit(bare.kit().stream().filter(k -> !k.name().equals("battery")).toList());
    assertThat(ElectricalFindings.of(ashore)).isEmpty();
  }

  @Test
  void a_battery_that_nothing_holds_is_loose_kit_though_its_line_says_fastened() {
    assertThat(isFastened(ElectricBoat.boat())).isTrue();
    assertThat(isFastened(boat("\"strapped\": true", "\"strapped\": false"))).isFalse();
  }

  /** What nobody stated is for the page of the wires; stated as missing or too far it holds. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"fuse\": 60 }|\"fuse\": 0 }|NO_FUSE",
        "\"fuse\": 60 }|\"fuse\": 100 }|FUSE_OVER_WIRE",
        "\"alone\": true, \"fuseAt\": 0.1|\"alone\": true, \"fuseAt\": 0.3|FUSE_TOO_FAR",
        "\"awg\": 8|\"awg\": 20|WIRE_TOO_THIN"
      })
  void a_main_fuse_that_guards_nothing_holds_the_boat_back(
      String right, String wrong, Fault fault) {
    assertThat(ElectricalFindings.of(boat(right, wrong)))
        .hasSize(1)
        .allMatch(Finding::holdsBack)
        .allMatch(f -> f.question().things().equals(List.of("main wire")))
        .allMatch(f -> f.note().equals(new Note.UnguardedCircuit(fault)));
    assertThat(ElectricalFindings.of(boat(", \"fuse\": 60 }", " }"))).isEmpty();
  }

  /** The answer itself is a finding; it must not stand there twice. */
  @Test
  void a_battery_found_loose_at_a_point_of_a_checklist_is_one_finding() {
    Boat stated = ElectricBoat.boat();
    Boat found =
        stated.withPointAnswers(
            List.of(
                new PointAnswer(
                    "battery-held",
                    "Battery",
                    "battery",
                    "It is held",
                    PointCondition.NOT_AS_IT_SHOULD_BE,
                    PointGravity.PUT_RIGHT_FIRST,
                    Optional.of(BoatFact.KIT_LOOSE),
                    0,
                    "",
                    "Iris",
                    LocalDate.of(2026, 6, 1),
                    "")));
    assertThat(found.asFound().electrics().battery().orElseThrow().strapped()).hasValue(false);
    assertThat(ElectricalFindings.of(found.asFound())).isEmpty();
  }

  private static boolean isFastened(Boat boat) {
    return BoatModel.of(boat, LocalDate.of(2026, 6, 1)).boat().kit().stream()
        .filter(k -> k.name().equals("battery"))
        .allMatch(Kit::fastened);
  }

  private static Boat boat(String right, String wrong) {
    assertThat(ElectricBoat.JSON).contains(right);
    return BoatFile.parse(ElectricBoat.JSON.replace(right, wrong), "boat.json");
  }
}
