package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandRegistry;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.report.ReportJson;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleBoats;
import thwartwise.record.SampleRecords;
import thwartwise.shell.LineSource.PipedLines;

class InspectionOutputTest {
  private static final Report REPORT = MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS);
  private static final InspectionRecord INSPECTION = SampleRecords.of(SampleBoats.plain(), REPORT);

  private static final Path RECORD = Path.of("kept", "r-1.json");

  @TempDir Path folder;
  private final StringWriter out = new StringWriter();

  private static Inspector.SavedInspection kept(String... warnings) {
    return new Inspector.SavedInspection(INSPECTION, RECORD, List.of(warnings));
  }

  private CommandInput given(String... more) {
    List<String> words = new ArrayList<>(List.of("demo", "--folder", folder.toString()));
    words.addAll(List.of(more));
    Inspector none =
        new Inspector(
            (boat, rules, today, progress) -> REPORT,
            (inspection, number, corrects) -> List.of(),
            TestShell.NOON,
            new ProgramVersion("9.9"));
    return new CommandInput(
        new CommandContext(
            new CommandLineParser(List.of(new DemoCommand(none))).parse(words),
            new CommandRegistry(Set.of()),
            new PrintWriter(out, true),
            new PipedLines(new BufferedReader(new StringReader("")), new PrintWriter(out))));
  }

  private String printed() {
    return out.toString().replace("\r\n", "\n");
  }

  /** The screen is shown all the same, and the exit code is that of the report. */
  @Test
  void a_list_that_could_not_be_written_is_a_note_under_the_screen() {
    InspectionOutput.keeping(
        given(), INSPECTION, reader -> kept("kept/chain.list: cannot be \u001bwritten."));

    assertThat(printed())
        .startsWith(INSPECTION.boat().name() + ": ")
        .contains("\nNote: kept/chain.list: cannot be ?written.\n")
        .contains("\nRecord: " + RECORD + "\n");
    assertThat(Exit.of(REPORT)).isEqualTo(Exit.NOTHING_HOLDS_BACK);
  }

  @Test
  void where_no_pdf_could_be_made_a_note_says_what_to_print_instead() {
    InspectionOutput.printSaved(kept(), given());

    assertThat(printed())
        .contains(
            "\nNote: no PDF could be made here; print the HTML page from a browser instead\nRecord: ");
  }

  @Test
  void the_screen_is_shown_before_anything_is_kept_and_once() {
    String title = INSPECTION.boat().name() + ": ";
    InspectionOutput.keeping(
        given(),
        INSPECTION,
        reader -> {
          reader.run();
          assertThat(printed()).startsWith(title).doesNotContain("Record: ");
          return kept();
        });

    assertThat(printed()).containsOnlyOnce(title).containsOnlyOnce("\nRecord: ");
  }

  @Test
  void json_stands_alone() {
    InspectionOutput.keeping(given("--json"), INSPECTION, reader -> kept("a note"));

    assertThat(ReportJson.parse(printed(), "output").boat()).isEqualTo(REPORT.boat());
  }

  @Test
  void the_papers_of_a_record_are_set_after_the_screen_was_given_to_the_reader() {
    List<String> order = new ArrayList<>();
    Inspector inspector =
        new Inspector(
            (boat, rules, today, progress) -> REPORT,
            (inspection, number, corrects) -> {
              order.add("papers of " + number);
              return List.of();
            },
            TestShell.NOON,
            new ProgramVersion("9.9"));

    inspector.record(INSPECTION, () -> order.add("screen")).papers().of("7", Optional.empty());

    assertThat(order).containsExactly("screen", "papers of 7");
  }

  @Test
  void a_path_in_the_home_folder_is_shown_as_it_is_typed() {
    Path home = Path.of(System.getProperty("user.home"));
    Path file = home.resolve("thwartwise").resolve("records");

    assertThat(CommandInput.asPath(CommandInput.toHome(file))).isEqualTo(file);
    assertThat(CommandInput.toHome(file)).isEqualTo("~/thwartwise/records");
    assertThat(CommandInput.toHome(home)).isEqualTo(home.toString());
    assertThat(CommandInput.toHome(RECORD)).isEqualTo(RECORD.toString());
  }

  @Test
  void what_no_advice_changes_is_printed_before_advice_is_looked_for_and_once() {
    String title = INSPECTION.boat().name() + ": ";
    InspectionOutput.inspecting(
        given(),
        reader -> {
          reader.accept(INSPECTION);
          assertThat(printed()).startsWith(title).doesNotContain("Record: ");
          return INSPECTION;
        },
        (inspection, reader) -> kept());

    assertThat(printed()).containsOnlyOnce(title).containsOnlyOnce("\nRecord: ");
    String anew = printed();
    out.getBuffer().setLength(0);
    InspectionOutput.keeping(given(), INSPECTION, reader -> kept());
    assertThat(anew).isEqualTo(printed());
  }

  @Test
  void json_stands_alone_whatever_is_known_early() {
    InspectionOutput.inspecting(
        given("--json"),
        reader -> {
          reader.accept(INSPECTION);
          assertThat(printed()).isEmpty();
          return INSPECTION;
        },
        (inspection, reader) -> kept());

    assertThat(ReportJson.parse(printed(), "output").boat()).isEqualTo(REPORT.boat());
  }
}
