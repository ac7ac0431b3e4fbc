package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Advice;
import thwartwise.advice.AdvicePiece;
import thwartwise.advice.AdvicePiece.AdviceReading;
import thwartwise.advice.AdvicePiece.AdviceWorse;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.files.report.OldNames;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.page.Sentence;
import thwartwise.record.SampleRecords;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Deed;

class AdviceWordsTest {
  private static final UnitFormat METRIC = new UnitFormat(UnitSystem.METRIC);
  private static final AdviceReading MOVED =
      new AdviceReading(
          OldNames.question("swamped, heel"),
          OldNames.loadCase("2 of 95 kg at bench").crew(),
          Margin.atMost(Math.toRadians(10), OptionalDouble.of(Math.PI), Unit.DEGREE),
          OptionalDouble.of(Math.toRadians(3.21)));

  private static AdvicePiece piece(
      int people, double load, List<String> right, List<AdviceWorse> worse, List<String> acts) {
    return new AdvicePiece(
        new Deed.AsRecorded("Glue in foam", "Along the sides", List.of("Mind the glue")),
        Effort.AN_HOUR,
        people,
        40.7,
        load,
        Optional.of(MOVED),
        right.stream().map(OldNames::question).toList(),
        worse,
        acts.stream().map(act -> OldNames.question(act).subject()).toList());
  }

  private static AdviceWorse worse(String check, Role role, String loading, Outcome after) {
    return new AdviceWorse(
        OldNames.question(check),
        role,
        OldNames.loadCase(loading).kind(),
        Optional.of(Outcome.MEETS),
        after);
  }

  @Test
  void a_piece_tells_what_it_buys_moves_and_costs() {
    AdvicePiece piece =
        piece(
            1,
            -2.2,
            List.of("swamped, heel", "swamped, lift to spare"),
            List.of(
                worse(
                    "leaning out over the side",
                    Role.FORBIDS_AN_ACT,
                    "as loaded",
                    Outcome.BORDERLINE),
                worse(
                    "leaning out over the side, freeboard left",
                    Role.FORBIDS_AN_ACT,
                    "as loaded",
                    Outcome.FALLS_SHORT)),
            List.of("climbing in over the stern"));
    assertThat(joined(AdviceWords.phrases(piece, true, new HashSet<>(), METRIC)))
        .isEqualTo(
            "Glue in foam. One adult more and 40 kg more of people; 3 kg less in all, because"
                + " extra weight counts at its worst place; puts right what falls short"
                + " as loaded today (swamped: heel and lift to spare). With 2 of 95 kg at"
                + " bench, swamped, heel: from rolling over to 3.3°, limit 10.0°. Effort: about an"
                + " hour. Along the sides. Mind the glue. Forbidden with the larger crew:"
                + " climbing in over the stern. With the same people aboard (as loaded) these get"
                + " worse: leaning out over the side (then: falls short).");
    assertThat(joined(AdviceWords.phrases(piece, false, new HashSet<>(), METRIC)))
        .startsWith("Glue in foam. With 2 of 95 kg at bench");
  }

  private static String joined(String[] sentences) {
    return Sentence.joined(List.of(sentences)).replace('\u00a0', ' ');
  }

  @Test
  void what_to_do_first_says_that_there_is_a_price() {
    assertThat(first(piece(1, 0, List.of(), List.of(), List.of())))
        .isEqualTo("Glue in foam: one adult more and 40 kg more of people.");
    assertThat(first(piece(1, 0, List.of(), List.of(), List.of("standing"))))
        .endsWith("The sheet about changes says what gets worse.");
  }

  private static String first(AdvicePiece piece) {
    return joined(AdviceWords.first(piece, SampleRecords.recommendation(), METRIC));
  }

  // Two of 92 kg go already: the second adult is a step of three kilograms, and no gain of 95.
  @Test
  void an_adult_more_who_goes_almost_now_is_told_as_such() {
    assertThat(
            joined(
                AdviceWords.first(
                    piece(1, 0, List.of(), List.of(), List.of()),
                    SampleRecords.nearlyTwo(),
                    METRIC)))
        .isEqualTo(
            "Glue in foam: one adult more and 40 kg more of people; without it, two people of up"
                + " to 92 kg"
                + " each may go.");
  }

  @Test
  void first_comes_what_puts_today_right_and_never_what_makes_a_limit_worse() {
    AdvicePiece more = piece(2, 0, List.of(), List.of(), List.of());
    AdvicePiece right = piece(0, 0, List.of("swamped, heel"), List.of(), List.of());
    AdvicePiece harm =
        piece(
            3,
            0,
            List.of(),
            List.of(worse("freeboard", Role.LIMITS_CREW, "as loaded", Outcome.FALLS_SHORT)),
            List.of());
    assertThat(AdviceSection.first(new Advice(List.of(harm, more, right), List.of())))
        .containsExactly(right, more);
  }

  @Test
  void no_more_than_three_things_come_first() {
    List<AdvicePiece> pieces =
        List.of(
            piece(4, 0, List.of(), List.of(), List.of()),
            piece(3, 0, List.of(), List.of(), List.of()),
            piece(2, 0, List.of(), List.of(), List.of()),
            piece(1, 0, List.of(), List.of(), List.of()));
    assertThat(AdviceSection.first(new Advice(pieces, List.of()))).hasSize(3);
  }
}
