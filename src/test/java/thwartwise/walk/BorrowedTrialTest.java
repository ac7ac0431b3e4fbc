package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.ObservedTrial;
import thwartwise.checks.FindingText;
import thwartwise.crew.Recommendation;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.QuickAnswer;
import thwartwise.record.InspectionRecord;
import thwartwise.report.AssumptionWords;
import thwartwise.report.CardPage;
import thwartwise.report.Screen;
import thwartwise.report.TextPage;

/** A borrowed boat of which no leak test is shown: what its papers say, and what a trial does. */
class BorrowedTrialTest {
  private static final Boat UNTESTED = Sheet.borrowed(true).with("short.tested", "no").boat();
  private static final InspectionRecord WITHOUT = inspected(UNTESTED);

  private static final List<String> SEATS =
      List.of("aft seat", "fore seat", "middle seat", "middle seat", "aft seat", "fore seat");

  private static InspectionRecord inspected(Boat boat) {
    return new InspectionRecord(
        Sheet.TODAY.atTime(9, 0).atOffset(ZoneOffset.UTC),
        "the leader",
        "0.1.0",
        boat,
        Inspection.withoutAdvice(boat, RuleSetFile.bundledRuleBook(), Sheet.TODAY));
  }

  private static String bare(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ");
  }

  private static String screen(InspectionRecord record) {
    List<String> lines = Screen.of(record, 21);
    assertThat(lines).hasSizeLessThanOrEqualTo(21);
    return bare(String.join("\n", lines));
  }

  @Test
  void without_a_trial_the_screen_says_what_it_carries_dry_and_names_the_trial_first() {
    assertThat(screen(WITHOUT))
        .startsWith(
            "Gravy Boat: launch held. Nobody and nothing goes aboard, as the boat stands."
                + " Dry: It carries two adults."
                + " Filled: Nothing shows that it holds anybody up when full of water, so nobody"
                + " goes"
                + " yet."
                + " Wrong: It sinks when full of water: 76 kg too heavy.")
        .contains(
            " First: 1. Fill it to the brim in knee-deep water and sit in it for ten minutes,"
                + " with those")
        .contains(" Never: Going aboard as the boat stands. ");
  }

  @Test
  void the_card_and_the_glance_call_dry_figures_dry() {
    String dry =
        " Dry, it carries two adults. Nothing shows that it holds anybody up when full of water, so"
            + " nobody goes yet. ";
    assertThat(bare(CardPage.text(WITHOUT, "7"))).contains("*** Launch held ").contains(dry);
    assertThat(bare(TextPage.of(WITHOUT))).contains("*** Launch held ").contains(dry);
  }

  @Test
  void the_sheet_of_changes_begins_with_the_trial_step_by_step() {
    assertThat(bare(TextPage.of(WITHOUT)))
        .contains(
            " What to change, and what nobody may do --------------------------------------"
                + " First: the ten-minute trial in knee-deep water"
                + " ---------------------------------------------- No chamber of this boat was"
                + " shown to be tight, so it counts as holding nobody up when it is full of water.")
        .containsSubsequence(
            " 1. Choose calm, warm water",
            " 2. Weigh those who are to go",
            "No more than two adults sit in it: that is what it carries dry.",
            " 3. Lean together",
            " 4. Sit still while others fill it to the brim",
            " 5. Sit in it for ten minutes by the clock, and lean a little",
            " every head must stay clear of the water",
            " 6. Get out one after another and back in, until each has been the first",
            " 7. Bail it out",
            " No chamber may have taken water.",
            " 8. Nobody goes if any of this failed or was not seen",
            "If all of it was seen and went well, type it at \"today\"",
            " for those people on those seats");
  }

  /** Water over a battery makes gas and shorts it; its weight must be there all the same. */
  @Test
  void a_battery_stays_ashore_while_the_boat_is_filled_and_its_weight_does_not() {
    Kit battery =
        new Kit("battery", 12, Vector3.of(0.8, 0, 0.1), Optional.empty(), true, Optional.empty());
    List<Kit> kit = Stream.concat(UNTESTED.kit().stream(), Stream.of(battery)).toList();
    String ashore =
        "but leave this ashore and tie bags of wet sand of the same weight in its place";
    assertThat(bare(TextPage.of(inspected(UNTESTED.withKit(kit))))).contains(ashore + ": battery.");
    assertThat(bare(TextPage.of(WITHOUT))).doesNotContain(ashore);
  }

  private static ObservedTrial seen(int days, int people, double mass) {
    return seen(days, people, mass, SEATS.subList(0, people));
  }

  private static ObservedTrial seen(int days, int people, double mass, List<String> seats) {
    return new ObservedTrial(
        Sheet.TODAY.minusDays(days), "Ann Lee", people, mass, 12, true, true, seats);
  }

  private static InspectionRecord with(ObservedTrial seen) {
    return inspected(UNTESTED.withObservedTrial(Optional.of(seen)));
  }

  private static Recommendation recommended(ObservedTrial seen) {
    return recommended(UNTESTED.withObservedTrial(Optional.of(seen)));
  }

  private static Recommendation recommended(Boat boat) {
    return QuickAnswer.recommended(boat, RuleSetFile.bundledRuleBook(), Sheet.TODAY);
  }

  @Test
  void without_a_trial_nobody_is_recommended() {
    assertThat(recommended(UNTESTED).withheld()).isTrue();
  }

  /** 150 kg seen, two people: one or two of 75 kg each; nobody was seen with more than a share. */
  @Test
  void a_trial_of_the_day_lifts_nobody_to_what_was_seen_and_no_further() {
    Recommendation lifted = recommended(seen(0, 2, 150));
    assertThat(lifted.withheld()).isFalse();
    assertThat(lifted.people()).isZero();
    assertThat(lifted.crew()).isLessThanOrEqualTo(150).isGreaterThan(140);
    assertThat(lifted.crewLimits().get(0).massLimit()).isEqualTo(75);
    assertThat(lifted.extra()).isZero();
    assertThat(lifted.crewLimits()).extracting(l -> l.people()).containsExactly(1, 2);
    assertThat(lifted.crewLimits().get(1).massLimit()).isEqualTo(75);
  }

  /** The rail and the heel carry two adults dry, whoever was seen in it full of water. */
  @Test
  void more_people_than_are_carried_dry_are_not_recommended_however_many_were_seen() {
    Recommendation lifted = recommended(seen(0, 3, 300));
    assertThat(lifted.people()).isEqualTo(2).isEqualTo(lifted.staysUpWith());
  }

  /**
   * Each of four was the first out and the last in it; which two of them were left nobody knows.
   */
  @Test
  void two_of_four_were_not_seen_by_themselves() {
    assertThat(recommended(seen(0, 4, 400)).people()).isEqualTo(1);
  }

  @Test
  void a_trial_lifts_no_figure_when_fewer_or_lighter_people_were_seen() {
    Recommendation more = recommended(seen(0, 2, 150));
    Recommendation less = recommended(seen(0, 1, 80));
    assertThat(less.people()).isZero();
    assertThat(less.crew()).isLessThanOrEqualTo(80).isLessThan(more.crew());
    assertThat(less.crewLimits()).extracting(l -> l.people()).containsExactly(1);
  }

  @Test
  void a_trial_of_yesterday_or_one_too_short_counts_for_nothing() {
    assertThat(recommended(seen(1, 2, 150))).isEqualTo(recommended(UNTESTED));
    assertThat(
            recommended(
                    new ObservedTrial(
                        Sheet.TODAY, "Ann Lee", 2, 150, 9.9, true, true, SEATS.subList(0, 2)))
                .withheld())
        .isTrue();
  }

  @Test
  void what_was_seen_of_another_hull_kit_or_chamber_counts_for_nothing() {
    Boat seen = UNTESTED.withObservedTrial(Optional.of(seen(0, 2, 150)));
    assertThat(seen.withKit(List.of()).observedTrial()).isEmpty();
    assertThat(seen.withHullMass(80).observedTrial()).isEmpty();
    assertThat(seen.withChambers(Sheet.borrowed(true).boat().chambers()).observedTrial()).isEmpty();
    assertThat(seen.withAboard(List.of()).observedTrial()).isPresent();
  }

  @Test
  void a_trial_that_went_badly_holds_on_any_day_and_after_any_change() {
    ObservedTrial bad =
        new ObservedTrial(Sheet.TODAY.minusDays(30), "Ann Lee", 2, 150, 3, false, false, List.of());
    Boat tested = Sheet.borrowed(true).boat().withObservedTrial(Optional.of(bad));
    String reason =
        "in the trial in knee-deep water on 2026-04-09, Ann Lee saw that full of water, with 2"
            + " people in it, it did not float level and a head did not stay clear, so nothing is"
            + " recommended";
    assertThat(recommended(tested).withheld()).isTrue();
    assertThat(FindingText.refusals(recommended(tested).reasons())).contains(reason);
    assertThat(FindingText.refusals(recommended(tested.withKit(List.of())).reasons()))
        .contains(reason);
  }

  @Test
  void every_paper_says_what_was_seen_and_that_it_was_not_worked_out() {
    InspectionRecord record = with(seen(0, 2, 150));
    String told =
        " Full of water, it was seen to float level with heads clear (seen, not worked out): with"
            + " two"
            + " people of 150 kg in all, on 9 May 2026, by Ann Lee. ";
    String bounds =
        " What was seen counts on that day only, for those people on those seats (aft seat, fore"
            + " seat) and for no more weight. ";
    assertThat(screen(record))
        .startsWith("Gravy Boat: nothing found against it within the limits of this inspection. ")
        .contains(told, bounds);
    assertThat(bare(CardPage.text(record, "7")))
        .contains(told, bounds, " Valid on 9 May 2026 only, the day of the trial. ")
        .doesNotContain("it sinks and holds nobody up");
    assertThat(bare(TextPage.of(record))).contains(told, bounds).doesNotContain("ten-minute trial");
  }

  @Test
  void a_trial_that_went_badly_stands_first_among_what_is_wrong() {
    ObservedTrial bad =
        new ObservedTrial(Sheet.TODAY, "Ann Lee", 2, 150, 3, false, true, List.of());
    assertThat(screen(with(bad)))
        .startsWith("Gravy Boat: launch held. ")
        .contains(
            " Wrong: Trial in knee-deep water: it went badly, with two people of"
                + " 150 kg in all, on 9 May 2026, by Ann Lee. It sinks when full of water")
        .doesNotContain("First: ");
  }

  @Test
  void a_file_keeps_what_was_seen_of_that_very_boat() {
    Boat seen = Sheet.borrowed(false).with("short.tested", "no").boat();
    seen = seen.withObservedTrial(Optional.of(seen(0, 2, 150)));
    String written = BoatFile.write(seen);
    assertThat(BoatFile.parse(written, "boat.json")).isEqualTo(seen);
    Boat changed = BoatFile.parse(written.replace("\"aft seat\"", "\"stern seat\""), "boat.json");
    assertThat(changed.observedTrial()).isEmpty();
    assertThat(AssumptionWords.of(changed))
        .contains(
            "The trial in knee-deep water of 2026-05-09 counts for nothing: it was not of the boat"
                + " as it stands here.");
  }

  @Test
  void a_boat_with_a_chamber_that_counts_is_not_asked_for_the_trial() {
    InspectionRecord tested = inspected(Sheet.borrowed(true).boat());
    assertThat(bare(TextPage.of(tested))).doesNotContain("ten-minute trial");
    assertThat(screen(tested)).contains(" Dry: It stays up with two adults.");
  }

  /** What was seen carried is no hull that was weighed: a guess of it must count as less. */
  @Test
  void a_guess_of_what_was_seen_counts_as_less_and_pounds_for_kilograms_are_asked_about() {
    Sheet tried = Sheet.borrowedAndTried();
    assertThat(tried.with("trial.mass", "about 150").boat().observedTrial().orElseThrow().mass())
        .isEqualTo(112.5);
    assertThat(tried.refused("trial.mass", "330"))
        .contains("is not between", "mass of so many people");
    assertThat(tried.refused("trial.mass", "330 indeed")).contains("is not between");
    assertThat(tried.accepted("trial.mass", "176")).endsWith("176 kg (that is 88 kg each)");
  }

  /** The middle seat stayed empty in the trial; it carries as much, and nobody saw it. */
  @Test
  void a_trial_lifts_only_the_seats_that_were_sat_on() {
    Recommendation lifted = recommended(seen(0, 2, 150));
    assertThat(lifted.crewLimits().get(0).excludedSeatings()).contains(List.of("middle seat"));
    assertThat(lifted.crewLimits().get(0).lighter()).isEmpty();
    assertThat(lifted.crewLimits().get(1).excludedSeatings())
        .contains(List.of("aft seat", "middle seat"), List.of("middle seat", "middle seat"))
        .doesNotContain(List.of("aft seat", "fore seat"));
    Recommendation elsewhere = recommended(seen(0, 2, 150, List.of("middle seat", "middle seat")));
    assertThat(elsewhere.crewLimits().get(1).excludedSeatings())
        .contains(List.of("aft seat", "fore seat"));
  }

  @Test
  void a_trial_that_does_not_say_where_they_sat_counts_for_nothing() {
    assertThat(recommended(seen(0, 2, 150, List.of()))).isEqualTo(recommended(UNTESTED));
    Boat seen = UNTESTED.withObservedTrial(Optional.of(seen(0, 2, 150)));
    String written = BoatFile.write(seen).replaceAll("\"seats\": \\[[^\\]]*\\],", "");
    Boat read = BoatFile.parse(written, "boat.json");
    assertThat(read.observedTrial()).isEmpty();
    assertThat(AssumptionWords.of(read))
        .contains(
            "The trial in knee-deep water of 2026-05-09 counts for nothing: it does not name the"
                + " seat of each who sat in it.");
  }

  /** Of 25 kg each; 110 is what they weigh in pounds. */
  @Test
  void pounds_typed_for_the_kilograms_of_children_are_asked_about() {
    Sheet children = Sheet.borrowedAndTried().with("trial.children", "7, 8");
    assertThat(children.refused("trial.mass", "110"))
        .startsWith("110 kg is not between 30 and 89 kg, ")
        .endsWith("the mass of so many people. Did you mean 49.9 kg?");
    assertThat(children.accepted("trial.mass", "110 indeed")).contains("110 kg");
    assertThat(children.with("trial.mass", "50").boat().observedTrial()).isPresent();
    assertThat(Sheet.borrowedAndTried().refused("trial.mass", "240")).contains("Did you mean");
  }

  @Test
  void ages_of_children_are_whole_years_of_no_more_people_than_sat_in_it() {
    Sheet tried = Sheet.borrowedAndTried();
    assertThat(tried.refused("trial.children", "six"))
        .isEqualTo("\"six\" is no list of ages up to 17. Type whole years, such as 6, 9, or none.");
    assertThat(tried.refused("trial.children", "6 40")).contains("no list of ages");
    assertThat(tried.refused("trial.children", "6, 7, 8"))
        .isEqualTo("That is 3 ages, and 2 sat in it. Type the ages of the children alone.");
    assertThat(tried.accepted("trial.children", "6 and 9")).endsWith("6, 9");
  }

  @Test
  void those_who_go_are_told_whether_they_may_sit_in_it_dry() {
    Sheet untested = Sheet.borrowed(true).with("short.tested", "no");
    assertThat(screen(inspected(untested.with("short.people", "Ann 60 kg, girl 9").boat())))
        .contains(
            " Dry: It carries two adults. With Ann and girl of 9 it stays within its dry"
                + " limits. Filled: Nothing shows that it holds anybody up when full of water");
    assertThat(screen(inspected(untested.with("short.people", "A 140, B 140, C 140").boat())))
        .contains(" With A, B and C it does not stay within its dry limits. ");
  }
}
