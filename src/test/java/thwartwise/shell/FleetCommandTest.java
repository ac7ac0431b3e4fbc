package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.boat.BoatFile;
import thwartwise.record.SampleBoats;
import thwartwise.report.FleetPage;

class FleetCommandTest {
  private static final String HEADS =
      "boat,inspected,verdict,people,crew kg,load kg,overdue,unusable\r\n";
  private static final String GOOD =
      "2026-06-01,Nothing found against it within the limits of this inspection,1,110,140,";

  @TempDir Path temp;

  @Test
  void a_boat_inspected_as_its_file_has_it_owes_nothing() throws IOException {
    inspect(save(SampleBoats.plain()));
    assertThat(csv(0)).isEqualTo(HEADS + "Soup Ladle," + GOOD + ",\r\n");
  }

  @Test
  void a_broken_file_is_a_row_and_stops_nothing() throws IOException {
    inspect(save(SampleBoats.plain()));
    save(SampleBoats.with("Soup Ladle", "=Egg Whisk"));
    Files.writeString(folder().resolve("boats/broken.json"), "{ \"format\": ");
    assertThat(csv(1))
        .isEqualTo(
            HEADS
                + "'=Egg Whisk,,,,,,never inspected,\r\n"
                + "Soup Ladle,"
                + GOOD
                + ",\r\n"
                + "broken.json,,,,,,,\"line 1, column 13: the text ends too early."
                + " Close the open quote or bracket, or copy it again.\"\r\n");
  }

  @Test
  void a_file_changed_since_its_record_and_a_stale_test_are_overdue() throws IOException {
    inspect(save(SampleBoats.with("2026-05-02", "2025-05-02")));
    save(SampleBoats.withKit(SampleBoats.with("2026-05-02", "2025-05-02"), "anchor", 5));
    assertThat(csv(1))
        .endsWith(
            GOOD
                + "boat file changed since the last record; leak test of fore locker of"
                + " 2025-05-02,\r\n");
  }

  @Test
  void a_record_that_was_changed_is_told_there_too() throws IOException {
    inspect(save(SampleBoats.plain()));
    try (var files = Files.list(folder().resolve("records/soup-ladle"))) {
      Path record = files.filter(f -> f.toString().endsWith(".json")).findFirst().get();
      Files.writeString(record, Files.readString(record).replace("somebody not named", "Eve Lee"));
    }
    assertThat(csv(1))
        .contains("\"its records were changed, added to or lost (\"\"records check\"\")\",\r\n");
  }

  @Test
  void any_folder_of_boat_files_and_records_will_do() throws IOException {
    inspect(save(SampleBoats.plain()));
    Path loose = Files.createDirectory(temp.resolve("stick"));
    try (var files = Files.list(folder().resolve("records/soup-ladle"))) {
      Path record = files.filter(f -> f.toString().endsWith(".json")).findFirst().get();
      Files.copy(record, loose.resolve("a record.json"));
    }
    Files.writeString(loose.resolve("egg.json"), SampleBoats.json().replace("Soup Ladle", "Egg"));
    TestShell shell = TestShell.open();
    assertThat(shell.run("fleet", loose.toString(), "--csv")).isEqualTo(1);
    assertThat(shell.out())
        .isEqualTo(
            (HEADS + "Egg,,,,,,never inspected,\r\nSoup Ladle," + GOOD + ",\r\n")
                .replace("\r\n", "\n"));
  }

  @Test
  void the_table_for_people_names_the_day() throws IOException {
    inspect(save(SampleBoats.plain()));
    TestShell shell = TestShell.open();
    assertThat(shell.run("fleet", "--folder", folder().toString())).isZero();
    assertThat(shell.out())
        .startsWith("Boats on 2026-06-01\n")
        .contains("Soup Ladle       2026-06-01");
  }

  @Test
  void a_folder_that_is_not_there_or_empty_is_refused() throws IOException {
    TestShell shell = TestShell.open();
    Path none = temp.resolve("none");
    assertThat(shell.run("fleet", none.toString())).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(none + ": there is no such folder. Name the folder that holds the boats.\n");
    Path empty = Files.createDirectory(temp.resolve("empty"));
    TestShell other = TestShell.open();
    assertThat(other.run("fleet", empty.toString())).isEqualTo(2);
    assertThat(other.err())
        .isEqualTo(
            empty + ": there are no boats and no records here. Name the folder that holds them.\n");
  }

  @Test
  void the_table_is_kept_as_a_page_for_a_browser() throws IOException {
    inspect(save(SampleBoats.plain()));
    Path page = temp.resolve("boats.html");
    TestShell shell = TestShell.open();
    assertThat(shell.run("fleet", "--folder", folder().toString(), "--html", page.toString()))
        .isZero();
    assertThat(shell.out()).isEqualTo("The page is in " + page + ". Open it in a browser.\n");
    assertThat(Files.readString(page)).contains("<th scope=\"row\">Soup Ladle</th>");
    TestShell both = TestShell.open();
    assertThat(both.run("fleet", "--csv", "--html", page.toString())).isEqualTo(2);
    assertThat(both.err())
        .isEqualTo("fleet: --csv and --html are two forms of one table. Leave one out.\n");
  }

  @Test
  void a_page_of_a_record_is_not_written_over() throws IOException {
    inspect(save(SampleBoats.plain()));
    Path shelf = folder().resolve("records/soup-ladle");
    Path record;
    try (var files = Files.list(shelf)) {
      record = files.filter(f -> f.toString().endsWith(".json")).findFirst().get();
    }
    Path page = Path.of(record.toString().replace(".json", ".html"));
    Files.writeString(page, FleetPage.html(List.of(), LocalDate.of(2026, 6, 1)));
    refused(page);
    // Records from before there were lists are known by their names.
    Files.delete(shelf.resolve("chain.list"));
    refused(page);
    refused(folder().resolve("records/boats.html"));
  }

  private void refused(Path page) throws IOException {
    String before = Files.exists(page) ? Files.readString(page) : "";
    TestShell shell = TestShell.open();
    assertThat(shell.run("fleet", "--folder", folder().toString(), "--html", page.toString()))
        .isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(page + ": records are kept in this folder. Name a file in another one.\n");
    assertThat(Files.exists(page) ? Files.readString(page) : "").isEqualTo(before);
  }

  @Test
  void a_folder_with_an_order_for_the_terminal_in_its_name_is_printed_harmless()
      throws IOException {
    Path odd = temp.resolve("ke\u001b[2Jpt");
    Path boat = save(SampleBoats.plain());
    TestShell shell =
        TestShell.whoseInspection((b, r, d) -> MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS));
    assertThat(shell.run("inspect", "--boat", boat.toString(), "--folder", odd.toString()))
        .isZero();
    assertThat(shell.out()).contains("\nRecord: " + temp + "/ke?[2Jpt/records/");
    assertThat(shell.out()).doesNotContain("\u001b");
  }

  private String csv(int code) {
    TestShell shell = TestShell.open();
    assertThat(shell.run("fleet", "--folder", folder().toString(), "--csv")).isEqualTo(code);
    return shell.out().replace("\n", "\r\n");
  }

  private Path save(Boat boat) {
    return new Workspace(folder()).saveBoat(BoatFile.parse(BoatFile.write(boat), "boat"));
  }

  private void inspect(Path boat) {
    TestShell shell =
        TestShell.whoseInspection((b, r, d) -> MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS));
    assertThat(shell.run("inspect", "--boat", boat.toString(), "--folder", folder().toString()))
        .isZero();
  }

  private Path folder() {
    return temp.resolve("kept");
  }
}
