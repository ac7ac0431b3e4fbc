package thwartwise.files.boat;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Chemistry;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.MainWire;
import thwartwise.electrics.TimedRun;
import thwartwise.sampleboats.ElectricBoat;

class ElectricsFileTest {
  private static Boat read(String json) {
    return BoatFile.parse(json, "boat.json");
  }

  @Test
  void what_is_electric_is_read_in_si() {
    Boat boat = read(ElectricBoat.JSON);
    Battery battery = boat.electrics().battery().orElseThrow();
    assertThat(battery.charge()).isEqualTo(80 * 3600.0);
    assertThat(battery.ratedTime()).hasValue(20 * 3600.0);
    assertThat(battery.chemistry()).hasValue(Chemistry.AGM);
    assertThat(battery.since()).hasValueSatisfying(d -> assertThat(d).hasToString("2024-04-01"));
    TimedRun run = boat.electrics().runs().get(0);
    assertThat(run.speed()).isCloseTo((200 / 150.0 + 200 / 200.0) / 2, within(1e-12));
    assertThat(run.current()).hasValue(31.0);
    Circuit motor = boat.electrics().circuits().get(0);
    assertThat(motor.copper()).hasValue(10e-6);
    assertThat(boat.electrics().latitude()).hasValue(Math.toRadians(52));
  }

  @Test
  void it_is_written_as_it_was_read() {
    Boat boat = read(ElectricBoat.JSON);
    String written = BoatFile.write(boat);
    assertThat(read(written)).isEqualTo(boat);
    assertThat(BoatFile.write(read(written))).isEqualTo(written);
    assertThat(written)
        .contains("\"ampHours\": 80")
        .contains("\"latitude\": 52")
        .contains("\"mm2\": 10")
        .contains("\"awg\": 14");
  }

  @Test
  void how_the_motor_hangs_and_the_panel_stands_is_read_and_written() {
    String json =
        ElectricBoat.JSON
            .replace(
                "\"claimedHours\": 5",
                "\"claimedHours\": 5, \"reachesBelow\": 0.4, \"tiltedBelow\": -0.05, \"tiltsAft\": 0.5")
            .replace("\"batteryStaysOn\": true", "\"batteryStaysOn\": true, \"sideArea\": 0.03");
    Boat boat = read(json);
    assertThat(boat.electrics().motor().orElseThrow().tiltedReach()).hasValue(-0.05);
    assertThat(boat.electrics().panel().orElseThrow().sideArea()).hasValue(0.03);
    assertThat(read(BoatFile.write(boat))).isEqualTo(boat);
  }

  @Test
  void the_main_wire_and_its_fuse_are_read_and_written() {
    Boat boat =
        read(
            ElectricBoat.JSON.replace(
                "\"awg\": 8", "\"there\": 0.5, \"sheathed\": true, \"mm2\": 10"));
    assertThat(boat.electrics().mainWire())
        .hasValue(
            new MainWire(
                Optional.of(60.0),
                Optional.of(0.1),
                Optional.of(0.5),
                Optional.of(10e-6),
                Optional.empty(),
                Optional.of(105.0),
                Optional.of(true),
                Optional.of(true)));
    assertThat(read(BoatFile.write(boat))).isEqualTo(boat);
    Boat gauge = read(ElectricBoat.JSON);
    assertThat(gauge.electrics().mainWire().orElseThrow().gauge()).hasValue(8);
    assertThat(read(BoatFile.write(gauge))).isEqualTo(gauge);
  }

  @Test
  void a_boat_without_it_is_written_without_it() {
    assertThat(BoatFile.write(read(ElectricBoat.WITHOUT))).doesNotContain("electrics");
  }

  /** Or a boat whose battery was carried ashore could not be read again. */
  @Test
  void a_battery_that_is_not_aboard_is_kept() {
    Boat boat = read(ElectricBoat.JSON);
    Boat without =
        boat.withKit(boat.kit().stream().filter(k -> !k.name().equals("battery")).toList());
    assertThat(read(BoatFile.write(without)).electrics()).isEqualTo(boat.electrics());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"ampHours\": 80|\"ampHours\": 80000|electrics, battery: \"ampHours\" is 80000"
            + " ampere-hours, outside the believable 1 to 600 ampere-hours for a battery one person"
            + " lifts. Read the ampere-hours (Ah) on the battery's label.",
        "\"AGM\"|\"AGN\"|electrics, battery: \"chemistry\" is \"AGN\", wanted one of flooded"
            + " lead-acid, AGM, gel, LiFePO4, lithium-ion; the nearest is \"AGM\". Read on the label"
            + " what it is made of, or leave it out.",
        "2024-04-01|April 2024|electrics, battery: \"since\" is \"April 2024\", which is not a day."
            + " Write the day it was first used, as in 2024-05-01, or leave it out.",
        "\"mm2\": 10|\"awg\": 8, \"mm2\": 10|electrics, circuit 1 \"motor\": \"awg\" does not belong"
            + " here: \"mm2\" says the same. Keep one of them.",
        "\"insulation\": 90|\"insulation\": 50|electrics, circuit 1 \"motor\": \"insulation\" is 50"
            + " degrees Celsius, outside the believable 60 to 260 degrees Celsius for the"
            + " insulation of a wire. Read the degrees Celsius printed on the wire, or leave it"
            + " out.",
        "\"awg\": 8|\"awg\": 8, \"mm2\": 10|electrics, mainWire: \"awg\" does not belong here:"
            + " \"mm2\" says the same. Keep one of them.",
        "\"fuse\": 60 }|\"fuse\": 600 }|electrics, mainWire: \"fuse\""
            + " is 600 A, outside the believable 0 to 500 A for a fuse on a small boat. Read the"
            + " amperes on the main fuse; 0 for none.",
        "\"name\": \"cabin lamp\"|\"name\": \"Motor\"|electrics, circuit 2 \"Motor\": the name"
            + " stands twice. Give each a name of its own."
      })
  void a_wrong_file_is_told_in_one_line(String right, String wrong, String line) {
    assertThat(ElectricBoat.JSON).contains(right);
    assertThatThrownBy(() -> read(ElectricBoat.JSON.replace(right, wrong)))
        .hasMessage("boat.json: " + line);
  }
}
