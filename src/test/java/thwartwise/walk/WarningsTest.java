package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.SealTest;
import thwartwise.files.boat.BoatFile;
import thwartwise.report.AssumptionWords;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/** Unlikely answers are asked about, and guesses are counted on the poor side. */
class WarningsTest {
  private static final Sheet FULL = Sheet.full(true);
  private static final Sheet FEET = Sheet.full(false);

  private static Reply.Refused refused(Sheet sheet, String key, String typed) {
    return (Reply.Refused) Sheet.WALK.take(sheet.upTo(key), typed);
  }

  @Test
  void centimetres_typed_into_metres_are_offered_as_they_could_be_typed() {
    Reply.Refused asked = refused(FULL, "hull.length", "366");
    assertThat(asked.meant()).hasValue("3.66 m");
    assertThat(asked.insisted()).isEmpty();
    assertThat(FULL.accepted("hull.length", asked.meant().orElseThrow()))
        .isEqualTo("Length overall: 3.66 m");
  }

  // The international foot is 0.3048 m exactly (agreement of 1959).
  @Test
  void feet_typed_as_inches_are_offered_exactly() {
    Reply.Refused asked = refused(FEET, "hull.length", "12");
    assertThat(asked.meant()).hasValue("3.6576 m");
  }

  @Test
  void an_odd_true_answer_is_taken_when_it_is_insisted_on_and_stays_taken() {
    Reply.Refused asked = refused(FULL, "hull.mass", "850");
    assertThat(asked.meant()).hasValue("385.5535145 kg");
    assertThat(asked.insisted()).hasValue("850 indeed");
    List<Answer> answers = Sheet.answer(FULL.upTo("hull.mass"), "850 indeed");
    assertThat(answers).contains(new Answer("hull.mass", "850 indeed"));
    assertThat(FULL.with("hull.mass", "850 indeed").boat().hull().mass()).isEqualTo(850);
  }

  /**
   * The pound is 0.45359237 kg exactly (agreement of 1959); a guessed mass counts a quarter more.
   */
  @Test
  void what_a_guess_probably_meant_is_a_guess_still() {
    Reply.Refused asked = refused(FULL, "kit.2.mass", "about 500");
    assertThat(asked.meant()).hasValue("about 226.796185 kg");
    assertThat(asked.reason()).contains("Did you mean 283.5 kg?");
    assertThat(FULL.accepted("kit.2.mass", asked.meant().orElseThrow() + " indeed"))
        .endsWith(": 226.8 kg, a guess, counted as 283.5 kg");
    assertThat(AssumptionWords.of(FULL.with("kit.2.mass", "about 226.796185 kg indeed").boat()))
        .anyMatch(a -> a.endsWith(": 226.8 kg, a guess, counted as 283.5 kg (judgement)."));
  }

  @Test
  void nobody_can_insist_on_what_cannot_be() {
    for (String typed : List.of("0", "-5", "5000", "85000")) {
      assertThat(refused(FULL, "hull.mass", typed).insisted()).as(typed).isEmpty();
      assertThat(FULL.refused("hull.mass", typed + " indeed")).contains("is not between");
    }
  }

  @Test
  void a_guess_is_counted_heavier_or_smaller_and_named() {
    Boat boat = FULL.with("kit.2.mass", "about 20").with("chamber.2.litres", "~ 80 l").boat();
    assertThat(boat.kit().get(1).mass()).isEqualTo(25);
    assertThat(boat.chambers().get(1).measuredVolume()).hasValue(0.06);
    assertThat(AssumptionWords.of(boat))
        .contains(
            "Guessed, not measured: Kit \"motor\", mass: 20 kg, a guess, counted as 25 kg (judgement).",
            "Guessed, not measured: Chamber \"midships thwart\", it holds: 80 l, a guess, counted"
                + " as 60 l (by its box 88 l, so 32 % less; the smaller counts; one of the two is"
                + " wrong: measure the box and pour again) (judgement).");
    assertThat(FULL.accepted("hull.length", "about 3.7"))
        .isEqualTo("Length overall: 3.70 m, a guess");
  }

  /** What is a guess is known of the answer, not read from its words. */
  @Test
  void a_name_that_ends_like_a_guess_is_none() {
    Boat boat = FULL.with("name", "Mary, a guess").boat();
    assertThat(boat.name()).isEqualTo("Mary, a guess");
    assertThat(boat.assumptions()).isEqualTo(FULL.boat().assumptions());
  }

  /** A guess must not make a leak test better than it was. */
  @Test
  void a_guessed_leak_counts_as_more_and_a_guessed_time_as_less() {
    Boat boat =
        FULL.with("chamber.1.test.litresIn", "about 1")
            .with("chamber.1.test.minutes", "about 20")
            .boat();
    SealTest test = ((Filling.Air) boat.chambers().get(0).filling()).test().orElseThrow();
    assertThat(test.litresIn()).isEqualTo(1.25);
    assertThat(test.minutes()).isEqualTo(15);
    assertThat(BoatModel.of(boat, Sheet.TODAY).spaces().get(0).counting().share()).isZero();
  }

  @Test
  void a_name_may_end_in_the_word_that_insists() {
    assertThat(FULL.with("name", "Very Fine indeed").boat().name()).isEqualTo("Very Fine indeed");
  }

  @Test
  void what_was_guessed_is_still_known_when_the_boat_file_is_read_back() {
    Boat boat = FULL.with("kit.2.mass", "about 20").boat();
    assertThat(BoatFile.parse(BoatFile.write(boat), "boat.json").assumptions())
        .isEqualTo(boat.assumptions());
    Boat borrowed = Sheet.borrowed(true).boat();
    assertThat(BoatFile.parse(BoatFile.write(borrowed), "boat.json")).isEqualTo(borrowed);
  }
}
