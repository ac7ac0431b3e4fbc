package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.electrics.Chemistry;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.sampleboats.ElectricBoat;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;

/** What is electric, entered in the walk: rows, what it is echoed as, changes of a known boat. */
class ElectricalWalkTest {
  private static final List<String> ROWS =
      List.of(
          "yes",
          "agm; 12; 960 Wh; C20; 2024-04-01; no; yes",
          "yes; 200 N; 45 A; 5 h; ; ; ",
          "3; 200 m; 2:30; 200; 29; 31",
          "no",
          "no",
          "motor; 2 m; 10 mm2 90 C; open; 60; 15 cm; plug at the transom",
          "lamp; 6 W; 3 m; awg 14; ; 2; 10 cm; rocker switch; 3",
          "no",
          "red key next to the battery",
          "60; 10 cm; awg 8 105 C; open; ");

  @Test
  void each_thing_fits_on_one_line_and_stands_in_the_boat() {
    List<Answer> answers = Sheet.full(true).upTo("electrics.any");
    List<String> repeats = new ArrayList<>();
    for (String line : ROWS) {
      Reply.Accepted taken = (Reply.Accepted) Sheet.WALK.take(answers, line);
      repeats.add(taken.understood());
      answers = taken.answers();
    }
    assertThat(repeats.get(2))
        .isEqualTo(
            """
            Motor, is it electric? yes
              Motor, thrust on its plate: 200 N
              Motor, current at full power: 45 A
              Motor, said to run at full power for: 5 hours
              Motor, lowest point below the bottom: not measured
              Motor, the same when tilted: not measured
              Motor, goes aft when tilted by: not measured""");
    assertThat(Sheet.open(answers).key()).isEqualTo("person.1.any");
    assertThat(((Reply.Listed) Sheet.WALK.take(answers, "list")).text())
        .contains("Wires \"lamp\", current with all on: 6 W (0.5 A)");
    assertThat(((Reply.WentBack) Sheet.WALK.take(answers, "back")).note()).isNotBlank();
    ElectricalSystem entered = Sheet.boat(Sheet.full(true).toTheEnd(answers)).electrics();
    ElectricalSystem file = ElectricBoat.boat().electrics();
    assertThat(entered.battery().orElseThrow().charge())
        .isEqualTo(file.battery().orElseThrow().charge());
    assertThat(entered.battery().orElseThrow().since())
        .isEqualTo(file.battery().orElseThrow().since());
    assertThat(entered.motor()).isEqualTo(file.motor());
    assertThat(entered.runs()).containsExactly(file.runs().get(0));
    assertThat(entered.mainSwitch()).isEqualTo(file.mainSwitch());
    assertThat(entered.mainWire().orElseThrow().gauge()).hasValue(8);
    assertThat(entered.mainWire().orElseThrow().fuseDistance()).hasValue(0.1);
    assertThat(entered.circuits().get(1).fuse()).hasValue(2.0);
  }

  /** Somebody who has the label at hand types it where it is asked whether there is one. */
  @Test
  void a_row_typed_at_the_gate_is_taken_for_yes_and_the_row() {
    List<Answer> gate = Sheet.full(true).upTo("electrics.any");
    String battery = "agm; 12; 960 Wh; C20; 2024-04-01; no; yes";
    assertThat(Sheet.answer(gate, battery))
        .isEqualTo(Sheet.answer(Sheet.answer(gate, "yes"), battery));
    Reply reply = Sheet.WALK.take(gate, "agm; heavy");
    assertThat(((Reply.Refused) reply).reason())
        .startsWith("Value 2 of the row, \"heavy\" for Battery, volts on its label: ")
        .endsWith("Nothing of the row was taken.");
  }

  @Test
  void a_part_is_entered_anew_in_a_walk_of_changes_and_the_rest_stays() {
    Boat before = ElectricBoat.boat();
    ChangedSheet changes =
        ChangedSheet.of(before)
            .with("changed.1", "electrics")
            .with("changed.1.part", "battery")
            .with("changed.1.battery.chemistry", "LiFePO4")
            .with("changed.1.battery.ampHours", "100");
    Boat after = changes.boat();
    assertThat(changes.questions())
        .extracting(Question::key)
        .doesNotContain("changed.1.battery.starter");
    assertThat(after.electrics().battery().orElseThrow().chemistry()).hasValue(Chemistry.LIFEPO4);
    assertThat(after.electrics().battery().orElseThrow().charge()).isEqualTo(360_000);
    assertThat(after.electrics().circuits()).isEqualTo(before.electrics().circuits());
    assertThat(after.electrics().runs()).isEqualTo(before.electrics().runs());
    assertThat(after.kit()).extracting(Kit::name).isEqualTo(names(before));
  }

  private static List<String> names(Boat boat) {
    return boat.kit().stream().map(Kit::name).toList();
  }
}
