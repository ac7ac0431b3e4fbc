package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Progress.Stage;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;

class ProgressTest {
  private static final RuleBook RULES = RuleBook.of(RuleSetFile.cautiousDefault());

  /** What was heard of a stage. */
  private record Heard(int most, int of) {
    Heard and(Heard other) {
      return new Heard(Math.max(most, other.most), of);
    }
  }

  @Test
  void every_step_of_every_stage_is_counted_and_the_answer_is_the_same() {
    Boat boat = BoxBoat.of(3, 1.2, 0.5).boat().withPlaces(List.of());
    Map<Stage, Heard> heard = new EnumMap<>(Stage.class);

    Report report =
        Inspection.of(
            boat,
            RULES,
            BoxBoat.TODAY,
            (stage, done, of) -> {
              synchronized (heard) {
                heard.merge(stage, new Heard(done, of), Heard::and);
              }
            });

    assertThat(report).isEqualTo(Inspection.of(boat, RULES, BoxBoat.TODAY));
    assertThat(heard).containsOnlyKeys(Stage.CREW, Stage.CHANGES, Stage.GAINS, Stage.COSTS);
    assertThat(heard.get(Stage.CREW)).isEqualTo(new Heard(0, 1));
    for (Stage counted : List.of(Stage.CHANGES, Stage.GAINS, Stage.COSTS)) {
      assertThat(heard.get(counted).most()).isEqualTo(heard.get(counted).of());
    }
    assertThat(heard.get(Stage.CHANGES).of()).isGreaterThan(3);
  }
}
