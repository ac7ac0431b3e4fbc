package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Advice;
import thwartwise.boat.BuoyancyReason;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.page.Page;
import thwartwise.record.Comparison;
import thwartwise.record.SampleBoats;
import thwartwise.record.SampleRecords;

class ComparisonSummaryTest {

  private static Report with(ChamberFigures... chambers) {
    Report plain = SampleRecords.report();
    return new Report(
        plain.boat(),
        plain.asLoaded(),
        plain.atLimit(),
        List.of(chambers),
        plain.findings(),
        plain.recommendation(),
        plain.capacityFigures(),
        plain.assumptions(),
        plain.ruleSet(),
        List.of(),
        Advice.NONE);
  }

  private static ChamberFigures locker(double counted, String why) {
    return new ChamberFigures(
        "bow locker", 0.150, Vector3.ZERO, counted, counted > 0, new BuoyancyReason.Stated(why));
  }

  private static String summary(Report before, Report after) {
    Page page = new Page();
    ComparisonSummary.write(
        page,
        Comparison.of(
            SampleRecords.of(SampleBoats.plain(), before),
            SampleRecords.of(SampleBoats.plain(), after)));
    return page.toString().replaceAll("[\\s\u00a0]+", " ");
  }

  @Test
  void a_chamber_that_counts_no_longer_is_named_with_its_litres_and_why() {
    assertThat(summary(with(locker(0.1467, "proven")), with(locker(0, "it holds the battery"))))
        .contains("* Bow locker: its 146 litres no longer count: it holds the battery.");
    assertThat(summary(with(locker(0, "claimed")), with(locker(0.1467, "proven"))))
        .contains("* Bow locker: its 146 litres count now.");
    assertThat(summary(with(locker(0.1467, "proven")), with()))
        .contains("* Bow locker: its 146 litres are gone.");
  }

  @Test
  void where_nothing_came_of_it_that_is_said() {
    assertThat(summary(with(), with()))
        .startsWith("In short: as many people and as much weight as before.")
        .contains("as before. Full of water")
        .doesNotContain("*");
  }

  /** What was not asked again is not within a limit. */
  @Test
  void an_act_that_is_not_asked_about_any_more_is_not_called_within_the_limits() {
    Report plain = SampleRecords.report();
    Report unasked = SampleRecords.report(plain.recommendation(), List.of());
    assertThat(summary(plain, unasked)).doesNotContain("Within the limits now");
  }

  @Test
  void people_who_hold_on_in_the_water_are_said_to() {
    assertThat(summary(SampleRecords.heldOnTo(), SampleRecords.heldOnTo()))
        .contains("one adult, in the water and holding on, as before");
  }
}
