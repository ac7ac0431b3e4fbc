package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitSystem;
import thwartwise.record.InspectionRecord;
import thwartwise.record.RecordEntry;
import thwartwise.record.SampleBoats;
import thwartwise.record.SampleRecords;
import thwartwise.report.TextPage;

class PageCommandTest {
  @TempDir Path folder;
  private final TestShell shell = TestShell.open();

  @BeforeEach
  void two_boats_were_inspected() {
    Report report = SampleRecords.report();
    InspectionRecord older = SampleRecords.of(SampleBoats.plain(), report);
    Workspace workspace = new Workspace(folder);
    workspace.saveRecord(
        new InspectionRecord(
            older.date().plusDays(1),
            "B. Later",
            older.programVersion(),
            SampleBoats.with("Soup Ladle", "Egg Whisk"),
            report),
        "its page");
    workspace.saveRecord(older, "its page");
  }

  private RecordEntry record(String boat) {
    return new Workspace(folder).records().boat(boat).last().orElseThrow();
  }

  private int page(String... words) {
    String[] all = new String[words.length + 3];
    all[0] = "page";
    System.arraycopy(words, 0, all, 1, words.length);
    all[words.length + 1] = "--folder";
    all[words.length + 2] = folder.toString();
    return shell.run(all);
  }

  @Test
  void without_a_word_it_is_the_page_of_the_newest_record() {
    assertThat(page()).isZero();

    assertThat(shell.out()).isEqualTo(TextPage.of(record("egg-whisk")).stripTrailing() + "\n");
    assertThat(shell.out()).startsWith("Egg Whisk\n").contains("by B. Later");
  }

  @Test
  void a_boat_or_a_record_may_be_named() {
    String name = SampleBoats.plain().name();
    assertThat(page("--boat", name)).isZero();
    assertThat(page(record(name).handle())).isZero();

    String once = TextPage.of(record(name)).stripTrailing() + "\n";
    assertThat(shell.out()).isEqualTo(once + once);
  }

  @Test
  void other_units_are_shown_for_once() {
    assertThat(page("--units", "feet")).isZero();

    RecordEntry feet = record("egg-whisk").in(UnitSystem.FEET_INCHES_POUNDS);
    assertThat(shell.out()).isEqualTo(TextPage.of(feet).stripTrailing() + "\n");
    assertThat(shell.out()).contains("244 lb    all people together").doesNotContain("110 kg");
    assertThat(record("egg-whisk").inspection().boat().units()).isEqualTo(UnitSystem.METRIC);
  }

  @Test
  void units_that_are_neither_are_refused() {
    assertThat(page("--units", "cubits")).isEqualTo(2);

    assertThat(shell.err()).isEqualTo("page: --units is metric or feet, not \"cubits\".\n");
  }

  @Test
  void a_number_is_a_sheet_with_the_name_of_the_boat_and_what_it_is_not() {
    assertThat(page("2")).isZero();

    assertThat(shell.out())
        .isEqualTo(
            """
            Egg Whisk
            =========

            In pictures
            -----------
            The HTML page and the PDF have pictures; show draws the boat in characters.

            A recommendation, not a capacity plate and not a builder's plate. Local rules
            come first, and whoever is in charge of the water has the last word.
            """);
  }

  @Test
  void a_sheet_has_the_details_that_the_page_only_names() {
    RecordEntry record = record("egg-whisk");
    String page = TextPage.of(record);

    List<TextPage.Sheet> sheets = TextPage.sheets(record);
    assertThat(sheets)
        .hasSize(6)
        .extracting(TextPage.Sheet::heading)
        .startsWith("May it be launched?");
    sheets.forEach(sheet -> assertThat(page).contains(sheet.heading()));
    assertThat(page).contains("Before each launch (on the bank, with this page in hand): page 5");
    assertThat(sheets.get(4).text())
        .contains("[ ] Every air chamber was opened or shaken and is dry");
    assertThat(sheets.get(5).text()).contains("This page");
  }

  @Test
  void a_sheet_that_is_not_there_is_refused_with_those_that_are() {
    assertThat(page("99")).isEqualTo(2);

    assertThat(shell.err())
        .startsWith("page: the page has sheets 1 to ")
        .contains(": 1 May it be launched?; 2 ")
        .hasLineCount(1);
  }

  @Test
  void what_is_no_record_and_what_is_no_number_are_refused() {
    assertThat(page("three")).isEqualTo(2);
    assertThat(page("egg-whisk/1", "three")).isEqualTo(2);

    assertThat(shell.err())
        .isEqualTo(
            folder.resolve("records")
                + ": there is no record \"three\" here. \"records\" lists what is.\n"
                + "page: the sheet is a number, behind the record: page custard-tart/2 3.\n");
  }

  @Test
  void where_nothing_was_inspected_it_says_what_to_do() {
    Path empty = folder.resolve("empty");

    assertThat(shell.run("page", "--folder", empty.toString())).isEqualTo(2);

    assertThat(shell.err())
        .isEqualTo(
            empty.resolve("records")
                + ": no record is kept here. Inspect a boat first, or name a --folder.\n");
  }
}
