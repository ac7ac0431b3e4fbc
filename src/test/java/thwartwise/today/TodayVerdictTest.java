package thwartwise.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.SomeWaters;
import thwartwise.boat.TrialSeen;
import thwartwise.checks.Finding;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.inspection.Report;
import thwartwise.record.SampleRecords;
import thwartwise.today.TodayVerdict.Point;

/** The questions carry the figures of the report and of the waters. */
class TodayVerdictTest {
  private static final Boat BOAT = BoxBoat.of(4, 1.5, 0.6).place("thwart", 2, 0.3, 0.3, 2).boat();

  private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

  private static List<String> questions(Boat boat) {
    return TodayVerdict.of(SampleRecords.report(), boat, DAY).points().stream()
        .map(point -> point.question().replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void the_list_is_short_enough_to_be_answered_at_the_slipway() {
    assertThat(questions(BOAT)).hasSizeBetween(10, 14);
  }

  @Test
  void kilograms_are_asked_with_the_figures_rounded_down() {
    assertThat(questions(BOAT).get(0))
        .isEqualTo(
            "Was everyone weighed dressed, jacket on, and within 110 kg in all: one person up to"
                + " 110 kg; 2 people up to 75 kg each, and never more than 2 people?");
    assertThat(questions(BOAT).get(1)).contains("within 140 kg").contains("no more than 17 kg");
  }

  @Test
  void seatings_that_are_left_out_are_named() {
    assertThat(questions(BOAT).get(2))
        .isEqualTo(
            "Does everyone know their seat, stay in it, and not like this: one person on stern"
                + " seat; 2 people on midships thwart?");
  }

  @Test
  void an_act_that_falls_short_or_was_not_assessed_is_named_with_those_never_worked_out() {
    assertThat(questions(BOAT).get(3))
        .isEqualTo(
            "Was everyone told what nobody does in this boat: changing places under way; hard"
                + " against one side; hauling something heavy in over the side; jumping in;"
                + " standing?");
  }

  @Test
  void the_temperature_the_file_names_is_in_the_question_rounded_to_the_cold_side() {
    Boat cold = BOAT.on(SomeWaters.sheltered().celsius(12.9).waters());
    assertThat(questions(cold)).anyMatch(q -> q.contains("(the file says 12 degrees)"));
    assertThat(questions(BOAT)).noneMatch(q -> q.contains("the file says"));
  }

  @Test
  void nothing_is_asked_of_a_boat_that_is_held() {
    Report held =
        SampleRecords.report(SampleRecords.nothing(List.of(), "it is outside"), List.of());
    assertThat(TodayVerdict.of(held, BOAT, DAY).held()).containsExactly("it is outside");
    assertThat(TodayVerdict.of(held, BOAT, DAY).points()).isEmpty();
  }

  @Test
  void a_boat_is_never_held_without_a_word() {
    Report held = SampleRecords.report(SampleRecords.nothing(List.of()), List.of());
    assertThat(TodayVerdict.of(held, BOAT, DAY).held()).isNotEmpty();
  }

  /** The file's own loading may fail; then it is told not to go like that. */
  @Test
  void a_loading_of_the_file_that_falls_short_is_named_among_the_seats() {
    Report good = SampleRecords.report();
    Finding meets = good.findings().get(0);
    Finding loaded =
        new Finding(
            meets.question(),
            meets.role(),
            Outcome.FALLS_SHORT,
            meets.margin(),
            meets.source(),
            good.asLoaded().loadCase(),
            Note.NONE);
    Report report = SampleRecords.report(SampleRecords.recommendation(), List.of(loaded));
    assertThat(TodayVerdict.of(report, BOAT, DAY).held()).isEmpty();
    assertThat(TodayVerdict.of(report, BOAT, DAY).points().get(2).question())
        .endsWith("; as loaded: helm 80 kg on stern seat?");
  }

  private static TrialSeen seen(LocalDate day) {
    return new TrialSeen(day, "Ann Lee", 2, 150, 12, true, true, List.of("thwart", "thwart"));
  }

  private static List<String> afterTrial(LocalDate day) {
    return TodayVerdict.of(SampleRecords.report(), BOAT.withTrialSeen(Optional.of(seen(day))), DAY)
        .points()
        .stream()
        .map(Point::question)
        .toList();
  }

  /** A chamber counts in the report of the sample, so no trial does. */
  @Test
  void a_trial_is_asked_about_only_where_it_counts() {
    assertThat(afterTrial(DAY)).isEqualTo(afterTrial(DAY.minusDays(1)));
    assertThat(afterTrial(DAY)).noneMatch(q -> q.contains("knee-deep"));
  }
}
