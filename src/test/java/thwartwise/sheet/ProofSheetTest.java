package thwartwise.sheet;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.AfloatProof.HeelMeasurement.ByRails;
import thwartwise.boat.AfloatProof.RailHeights;
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
      if (!question.key().endsWith(".any")) {
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

  private static final Map<String, String> FILLED =
      Map.ofEntries(
          Map.entry("proof.empty.bow", "0.41"),
          Map.entry("proof.empty.stern", "0.32"),
          Map.entry("proof.empty.port", "0.33"),
          Map.entry("proof.empty.starboard", "0.34"),
          Map.entry("proof.person.1.name", "Ann"),
          Map.entry("proof.person.1.mass", "70"),
          Map.entry("proof.person.1.place", "middle thwart"),
          Map.entry("proof.person.1.y", "-0.05"),
          Map.entry("proof.seated.bow", "0.36"),
          Map.entry("proof.seated.stern", "0.28"),
          Map.entry("proof.seated.port", "0.29"),
          Map.entry("proof.seated.starboard", "0.30"),
          Map.entry("proof.weight.mass", "15"),
          Map.entry("proof.weight.x", "1.7"),
          Map.entry("proof.weight.z", "0.1"),
          Map.entry("proof.weight.by", "rails"),
          Map.entry("proof.toPort.out", "0.4"),
          Map.entry("proof.toPort.port", "0.30"),
          Map.entry("proof.toPort.starboard", "0.37"),
          Map.entry("proof.toStarboard.out", "0.4"),
          Map.entry("proof.toStarboard.port", "0.36"),
          Map.entry("proof.toStarboard.starboard", "0.31"),
          Map.entry("proof.roll.swings", "10"),
          Map.entry("proof.roll.seconds", "12"),
          Map.entry("proof.date", "2026-11-24"),
          Map.entry("proof.by", "Bea"),
          Map.entry("trial.done", "yes"),
          Map.entry("trial.people", "1"),
          Map.entry("trial.children", "none"),
          Map.entry("trial.seat.1", "1"),
          Map.entry("trial.mass", "70"),
          Map.entry("trial.minutes", "12"),
          Map.entry("trial.level", "yes"),
          Map.entry("trial.heads", "yes"),
          Map.entry("trial.by", "Cleo"));

  /** Typed as the sheet has it: a line of boxes at a time, and what it says so of one by one. */
  @Test
  void a_filled_sheet_is_typed_line_by_line() {
    Walk walk = Walk.ofProof(PlainHulls.TODAY, BOAT);
    List<Answer> answers = List.of();
    for (List<String> line : ProofSheet.of(BOAT).lines()) {
      if (line.get(0).matches("proof\\.person\\.[23]\\..*")) {
        continue;
      }
      for (String typed : typed(line)) {
        answers = accepted(walk, answers, typed);
      }
      answers = line.get(0).equals("proof.person.1.name") ? accepted(walk, answers, "") : answers;
    }

    assertThat(walk.next(answers)).isInstanceOf(Step.Done.class);
    AfloatProof proof = Walk.proof(PlainHulls.TODAY, BOAT, answers);
    assertThat(proof.empty()).contains(new RailHeights(0.41, 0.32, 0.33, 0.34));
    assertThat(proof.seated()).contains(new RailHeights(0.36, 0.28, 0.29, 0.30));
    assertThat(proof.moved().orElseThrow().toStarboard().heel()).isEqualTo(new ByRails(0.36, 0.31));
    assertThat(proof.date()).isEqualTo("2026-11-24");
  }

  /** The boxes of a row together, then those that the sheet says are asked one by one. */
  private static List<String> typed(List<String> line) {
    Predicate<String> alone = key -> key.matches("proof\\.(date|by)|trial\\..*");
    List<String> filled = line.stream().filter(FILLED::containsKey).toList();
    String row =
        filled.stream().filter(alone.negate()).map(FILLED::get).collect(Collectors.joining("; "));
    return Stream.concat(
            Stream.of(row).filter(r -> !r.isEmpty()),
            filled.stream().filter(alone).map(FILLED::get))
        .toList();
  }

  private static List<Answer> accepted(Walk walk, List<Answer> answers, String typed) {
    Reply reply = walk.take(answers, typed);
    assertThat(reply).as("typed: %s", typed).isInstanceOf(Reply.Accepted.class);
    return ((Reply.Accepted) reply).answers();
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
