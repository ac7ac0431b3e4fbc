package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.crew.Recommendation;
import thwartwise.files.report.OldNames;
import thwartwise.inspection.Report;
import thwartwise.page.ParsedPage;
import thwartwise.record.InspectionRecord;
import thwartwise.record.RecordEntry;
import thwartwise.record.SampleBoats;
import thwartwise.record.SampleRecords;

class ComparePageTest {
  private final Boat boat = SampleBoats.plain();

  @Test
  void the_whole_page_tells_what_changed_and_then_what_came_of_it() {
    Report before = report(crew(2, 190.4, 230, 0.30), Outcome.MEETS, 0.2391);
    Report after = report(crew(1, 110.9, 180, 0.24), Outcome.FALLS_SHORT, 0.1811);
    assertThat(page(boat, before, SampleBoats.withKit(boat, "second battery", 22), after))
        .isEqualTo(
            """
            Soup Ladle: before and after
            ============================
            Before: soup-ladle/1, inspected on 14 June 2026, 09:05 (UTC+02:00) by M. Quill.
            After: soup-ladle/2, inspected on 15 June 2026, 10:00 (UTC) by Somebody Else.

            In short: it cost one adult, 80 kg of people and 50 kg in all.
            Dry, it stays up with two adults, as before. Full of water, it holds up one
            adult, before two adults.

            What changed
            ------------
            * Kit added: second battery 22 kg.

            Result
            ------
            Before: Nothing found against it within the limits of this inspection. After:
            Launch only after the work listed here is done.
            One person fewer: one adult of 95 kg instead of two adults. The second battery
            cost one person.
            Less is recommended because of "freeboard at rest": everything added has weight,
            also ballast, foam and planks, and lowers the lowest edge.
            * People: up to 110 kg instead of 190 kg.
            * People and everything not built in: up to 180 kg instead of 230 kg.
            * Extra weight besides people and listed kit: up to 20 kg, as before.
            * What stops the next person: swamped, as before.

            Changed outcomes
            ----------------
            As loaded:
            * Freeboard at rest: meets before, falls short after; from 0.23 m to 0.18 m; at
              least 0.20 m.

            Margins of the recommended crew
            -------------------------------
            After the allowance for tape and scales, in the worst seating allowed; each with
            the crew of its own record.
            * Freeboard at rest: from 0.30 m to 0.24 m; at least 0.20 m.

            The page of each record says for which waters and conditions its figures hold. A
            recommendation, not a capacity plate and not a builder's plate. Local rules come
            first, and whoever is in charge of the water has the last word.
            """);
  }

  @Test
  void a_figure_that_changed_without_its_outcome_is_told_last() {
    Report before = report(crew(1, 110, 180, 0.3), Outcome.MEETS, 0.2391);
    Report after = report(crew(1, 110, 180, 0.3), Outcome.MEETS, 0.2211);
    assertThat(page(boat, before, boat, after))
        .contains("Nothing that was measured or stated.\n")
        .endsWith(
            """
            Changed outcomes
            ----------------
            None.

            Same outcomes, other figures
            ----------------------------
            As loaded:
            * Freeboard at rest: meets; from 0.23 m to 0.22 m; at least 0.20 m.

            The page of each record says for which waters and conditions its figures hold. A
            recommendation, not a capacity plate and not a builder's plate. Local rules come
            first, and whoever is in charge of the water has the last word.
            """);
  }

  @Test
  void a_figure_that_is_shown_alike_is_not_told() {
    Report before = report(crew(1, 110, 180, 0.3), Outcome.MEETS, 0.2391);
    Report after = report(crew(1, 110, 180, 0.3), Outcome.MEETS, 0.2399);
    assertThat(page(boat, before, boat, after)).doesNotContain("other figures");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | 190 | 230 | 1 | 110 | 180 | The second battery cost one person.",
        "3 | 290 | 330 | 1 | 110 | 180 | The second battery cost two people.",
        "1 | 110 | 180 | 2 | 190 | 230 | The second battery gained one person.",
        "1 | 114.9 | 180 | 1 | 110.2 | 180 | The second battery cost 4 kg of crew.",
        "1 | 110 | 183 | 1 | 110 | 180 | The second battery cost 3 kg of load.",
        "1 | 110.1 | 180 | 1 | 110.9 | 180 | The second battery changed neither how many nor how"
            + " much."
      })
  void what_the_only_change_cost_is_said(
      int people,
      double crew,
      double load,
      int then,
      double thenCrew,
      double thenLoad,
      String cost) {
    Report before = report(crew(people, crew, load, 0.3), Outcome.MEETS, 0.3);
    Report after = report(crew(then, thenCrew, thenLoad, 0.3), Outcome.MEETS, 0.3);
    String page = page(boat, before, SampleBoats.withKit(boat, "second battery", 22), after);
    assertThat(page.replaceAll("\\s+", " ")).contains(cost);
  }

  // Foam under the floor of a boat that side boxes keep upright when swamped, a heavier rail,
  // stones
  // on the floor: what sounds like a gain may cost, and the page says what it works against.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "swamped, heel | Less is recommended because of \"swamped, heel\": full of water, it"
            + " floats on"
            + " its remaining buoyancy alone: lift low down or near the middle line raises boat and"
            + " people without steadying them, and lifts chambers along the sides out of the water,"
            + " where they steady nothing.",
        "three fifths to one side | Less is recommended because of \"three fifths to one"
            + " side\": weight high up makes it lean; weight low down steadies it but lowers it, so"
            + " that less side is left when it leans.",
        "swamped, fore locker lost | Less is recommended because of \"swamped, fore locker"
            + " lost\": everything added has weight; only what displaces more water than its own"
            + " weight lifts.",
        "no place for another person | Less is recommended because of \"freeboard at rest\":"
            + " everything added has weight, also ballast, foam and planks, and lowers the lowest"
            + " edge."
      })
  void where_less_is_recommended_the_page_says_why(String governs, String why) {
    Report before = report(crew(2, 190, 230, 0.3), Outcome.MEETS, 0.3);
    Report after = report(crew(1, 110, 180, 0.3, governs), Outcome.MEETS, 0.3);
    assertThat(page(boat, before, boat, after).replaceAll("\\s+", " ")).contains(why);
    assertThat(page(boat, after, boat, before)).doesNotContain("Less is recommended");
    assertThat(page(boat, after, boat, after)).doesNotContain("Less is recommended");
  }

  /** Twenty kilograms of kit left ashore are not loaded either: that is no fall. */
  @Test
  void less_kit_is_no_fall() {
    Report before = report(crew(2, 190, 230, 0.3), Outcome.MEETS, 0.3);
    Report after = report(crew(2, 190, 219.5, 0.3), Outcome.MEETS, 0.3);
    assertThat(page(boat, before, SampleBoats.withoutKit(boat, "motor"), after))
        .doesNotContain("Less is recommended");
    assertThat(page(boat, before, boat, after)).contains("Less is recommended");
  }

  @Test
  void a_step_in_adults_that_is_next_to_none_in_kilograms_is_told_as_such() {
    Report before = report(SampleRecords.nearlyTwo(), Outcome.MEETS, 0.3);
    Report after = report(crew(2, 190, 230, 0.3), Outcome.MEETS, 0.3);
    assertThat(page(boat, before, boat, after).replaceAll("\\s+", " "))
        .contains(
            "One person more: two adults of 95 kg instead of one adult. Before it two people of"
                + " up to 92 kg each could go.");
    assertThat(page(boat, after, boat, before).replaceAll("\\s+", " "))
        .contains(
            "One person fewer: one adult of 95 kg instead of two adults. Two people of up to 92 kg"
                + " each still may go.");
  }

  @Test
  void with_two_changes_no_cause_is_named() {
    Boat other = SampleBoats.withKit(SampleBoats.withKit(boat, "second battery", 22), "stove", 4);
    Report before = report(crew(2, 190, 230, 0.3), Outcome.MEETS, 0.3);
    Report after = report(crew(1, 110, 180, 0.3), Outcome.MEETS, 0.3);
    assertThat(page(boat, before, other, after))
        .contains("* Kit added: second battery 22 kg.\n* Kit added: stove 4 kg.\n")
        .contains("One person fewer: one adult of 95 kg instead of two adults.\n")
        .contains("In short: it cost one adult, 80 kg of people and 50 kg in all.\n")
        .doesNotContain("battery cost", "stove cost");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"x\": 0.95, \"y\": 0.0, \"z\": 0.12 | \"x\": 1.25, \"y\": 0.0, \"z\": 0.1 |"
            + " * Kit moved: battery, by 0.3 m forward and 0.02 m down. | Moving the battery cost"
            + " one person.",
        "\"mass\": 17.5 | \"mass\": 20 | * Kit changed: battery, 20 kg instead of 17.5 kg. | The"
            + " change"
            + " to the battery cost one person.",
        "\"litres\": 9, \"fastened\": true | \"litres\": 9, \"fastened\": true, \"workedFrom\":"
            + " \"stern seat\" | * Kit changed: battery, worked from the stern seat. | The change to the"
            + " battery cost one person.",
        "\"mass\": 61.0 | \"mass\": 68 | * Bare hull: 68 kg instead of 61 kg. | The 7 kg that the hull"
            + " became heavier cost one person.",
        "\"litres\": 86 | \"litres\": 80 | * Chamber changed: midships thwart, 80 litres measured"
            + " instead"
            + " of 86 litres measured. | The change to the midships thwart cost one person.",
        "\"seal\": \"claimed\" | \"seal\": \"open\" | * Chamber changed: midships thwart, open"
            + " instead of"
            + " claimed. | The change to the midships thwart cost one person.",
        "\"seal\": \"claimed\" | \"seal\": \"proven\", \"test\": { \"date\": \"2026-05-02\","
            + " \"how\":"
            + " \"water\", \"minutes\": 20, \"litresIn\": 0, \"by\": \"me\" } | * Chamber"
            + " changed: midships"
            + " thwart, proven instead of claimed. | The leak test of the midships thwart cost"
            + " one person."
      })
  void each_kind_of_change_is_told_in_words(
      String there, String instead, String change, String cost) {
    Report before = report(crew(2, 190, 230, 0.3), Outcome.MEETS, 0.3);
    Report after = report(crew(1, 110, 180, 0.3), Outcome.MEETS, 0.3);
    String page = page(boat, before, SampleBoats.with(there, instead), after);
    assertThat(page.replaceAll("\\s+", " ")).contains(change, cost);
  }

  @Test
  void kit_left_behind_is_told() {
    Report before = report(crew(1, 110, 180, 0.3), Outcome.MEETS, 0.3);
    Report after = report(crew(2, 190, 230, 0.3), Outcome.MEETS, 0.3);
    assertThat(page(boat, before, SampleBoats.withoutKit(boat, "motor"), after))
        .contains("* Kit removed: motor 10.5 kg.")
        .contains(
            "One person more: two adults of 95 kg instead of one adult. Leaving out the motor\n")
        .contains("gained one person.");
  }

  @Test
  void a_launch_that_is_held_names_no_cost_in_people() {
    Report before = report(crew(2, 190, 230, 0.3), Outcome.MEETS, 0.3);
    Report after = SampleRecords.report(SampleRecords.nothing(List.of(), "no"), before.findings());
    assertThat(page(boat, before, SampleBoats.withKit(boat, "second battery", 22), after))
        .contains("After:\nLaunch held.")
        .contains("* People: nothing instead of 190 kg.")
        .contains("* Freeboard at rest: 0.30 m before, not asked after; at least 0.20 m.")
        .contains(
            "How many: nothing recommended, before two adults of 95 kg. Nothing else changed:\n")
        .contains("the cause is the second battery.");
  }

  @Test
  void two_boats_a_wrong_order_and_a_changed_record_are_said_first() {
    Report report = SampleRecords.report();
    InspectionRecord other = SampleRecords.of(SampleBoats.with("Soup Ladle", "Egg Whisk"), report);
    RecordEntry late = kept(2, later(boat, report), true);
    String page = ComparePage.of(late, kept(1, other, false));
    assertThat(page.replaceAll("\\s+", " "))
        .contains("These are two boats: Soup Ladle and Egg Whisk.")
        .contains("The record named first is the younger of the two.")
        .contains(
            "Soup-ladle/1 was changed after it was saved: its content does not match its hash. Do"
                + " not"
                + " rely on it.");
  }

  @Test
  void as_a_page_for_a_browser_it_says_the_same() {
    Report before = report(crew(2, 190.4, 230, 0.30), Outcome.MEETS, 0.2391);
    Report after = report(crew(1, 110.9, 180, 0.24), Outcome.FALLS_SHORT, 0.1811);
    RecordEntry first = kept(1, SampleRecords.of(boat, before), true);
    RecordEntry second =
        kept(2, later(SampleBoats.withKit(boat, "<b>second</b> battery", 22), after), true);
    ParsedPage page = ParsedPage.of(ComparePage.html(first, second));
    String bare = ComparePage.of(first, second).replaceAll("(?m)^(\\* |[-=]+$)", "");
    assertThat(page.text()).isEqualTo(bare.replaceAll("\\s+", " ").strip());
    assertThat(page.all("b")).isEmpty();
    assertThat(page.all("h2")).hasSize(4);
    assertThat(ParsedPage.words(page.all("title").get(0)))
        .isEqualTo("soup-ladle/1 and soup-ladle/2");
  }

  @Test
  void no_line_is_wider_than_the_page() {
    Boat other = SampleBoats.withKit(boat, "x".repeat(200), 22);
    String page = page(boat, SampleRecords.report(), other, SampleRecords.report());
    assertThat(page.lines()).allMatch(line -> line.length() <= 80);
  }

  private static String page(Boat before, Report first, Boat after, Report second) {
    return ComparePage.of(
        kept(1, SampleRecords.of(before, first), true), kept(2, later(after, second), true));
  }

  private static InspectionRecord later(Boat boat, Report report) {
    return new InspectionRecord(
        OffsetDateTime.parse("2026-06-15T10:00:00Z"), "Somebody Else", "0.1.0", boat, report);
  }

  private static RecordEntry kept(int number, InspectionRecord inspection, boolean intact) {
    return new RecordEntry(
        "soup-ladle/" + number,
        "name",
        OptionalInt.of(number),
        "hash",
        intact,
        true,
        true,
        Optional.empty(),
        inspection);
  }

  private static Recommendation crew(int people, double crew, double load, double freeboard) {
    return crew(people, crew, load, freeboard, "swamped");
  }

  private static Recommendation crew(
      int people, double crew, double load, double freeboard, String governs) {
    return new Recommendation(
        people,
        crew,
        load,
        20,
        95,
        2,
        people,
        people,
        OldNames.factor(governs),
        List.of(),
        List.of(),
        List.of(),
        false,
        List.of(),
        List.of(OldNames.margin("freeboard at rest", freeboard, 0.2, true, Unit.METRE)),
        false);
  }

  private static Report report(Recommendation crew, Outcome outcome, double freeboard) {
    return SampleRecords.report(
        crew,
        List.of(
            OldNames.finding(
                "freeboard at rest",
                Role.LIMITS_CREW,
                outcome,
                OptionalDouble.of(freeboard),
                0.2,
                true,
                Unit.METRE,
                "ours (judgement)",
                "as loaded: helm",
                "")));
  }
}
