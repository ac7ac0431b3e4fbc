package thwartwise.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.inspection.PlainHulls;
import thwartwise.measure.UnitSystem;
import thwartwise.sheet.PrintedSheet.Paper;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/** The sheet for a proof afloat has room for all that "prove" asks, in its order. */
class ProofSheetTest {
  private static final Boat BOAT = PlainHulls.skiff();

  private static final Map<String, String> TYPED =
      Map.ofEntries(
          Map.entry("proof.person.1.any", "yes"),
          Map.entry("proof.person.2.any", "no"),
          Map.entry("proof.person.1.name", "Ann"),
          Map.entry("proof.person.1.mass", "70 kg"),
          Map.entry("proof.person.1.place", BOAT.places().get(0).name()),
          Map.entry("proof.weight.mass", "15 kg"),
          Map.entry("proof.pendulum", "1 m"),
          Map.entry("proof.toPort.swing", "0.03 m"),
          Map.entry("proof.toStarboard.swing", "0.03 m"),
          Map.entry("proof.toPort.level", "2"),
          Map.entry("proof.toStarboard.level", "2"),
          Map.entry("proof.roll.swings", "10"),
          Map.entry("proof.roll.seconds", "12"),
          Map.entry("proof.date", "today"),
          Map.entry("proof.by", "Bea"),
          Map.entry("trial.children", "none"),
          Map.entry("trial.people", "1"),
          Map.entry("trial.mass", "70 kg"),
          Map.entry("trial.minutes", "12"),
          Map.entry("trial.by", "Cleo"));

  /** The questions of a run that leaves nothing out, without those that only open a part. */
  private static List<String> asked(String by) {
    Walk walk = Walk.ofProof(PlainHulls.TODAY, BOAT);
    List<Answer> answers = List.of();
    List<String> keys = new ArrayList<>();
    while (walk.next(answers) instanceof Step.Ask ask) {
      Question question = ask.question();
      if (!question.key().endsWith(".any") && !question.key().equals("trial.done")) {
        keys.add(question.key());
      }
      answers = taken(walk, answers, question, by);
    }
    return keys;
  }

  private static List<Answer> taken(Walk walk, List<Answer> answers, Question question, String by) {
    String usual = question.choices().contains("yes") ? "yes" : "0.3 m";
    String typed =
        question.key().equals("proof.weight.by") ? by : TYPED.getOrDefault(question.key(), usual);
    for (String each : List.of(typed, "", "0", "1")) {
      if (walk.take(answers, each) instanceof Reply.Accepted accepted) {
        return accepted.answers();
      }
    }
    throw new AssertionError("no answer fits " + question.key());
  }

  @Test
  void it_has_room_for_all_that_is_asked_in_its_order() {
    List<String> room = ProofSheet.of(BOAT).questions();
    for (String by : List.of("rails", "plumb line", "level")) {
      List<String> asked = asked(by);
      assertThat(asked).contains("proof.seated.bow", "trial.level").hasSizeGreaterThan(25);
      assertThat(room.stream().filter(asked::contains)).containsExactlyElementsOf(asked);
    }
  }

  @Test
  void it_says_the_cautions_first_and_speaks_the_units_of_the_boat() {
    String metric = ProofSheet.of(BOAT).toString();
    String feet = ProofSheet.of(BOAT.in(UnitSystem.FEET_INCHES_POUNDS)).toString();

    assertThat(metric.indexOf("A line from the boat to somebody ashore"))
        .isBetween(1, metric.indexOf("Nobody aboard"));
    assertThat(metric).contains("Lengths in metres").contains("10 to 20 kg");
    assertThat(feet).contains("Lengths in feet and inches").contains("20 to 40 lb");
    assertThat(ProofSheet.of(BOAT).html(Paper.LETTER)).contains("size: letter portrait");
  }
}
