package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.archive.RecordFile;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.report.ReportJson;
import thwartwise.hull.UnusableBoat;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.report.Screen;

class InspectCommandTest {
  private static final Report GOOD = MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS);

  @TempDir Path temp;
  private String boat;
  private String folder;

  @BeforeEach
  void lay_out_a_boat_file() throws IOException {
    Path file = temp.resolve("my boat.json");
    try (var in = getClass().getResourceAsStream("/thwartwise/files/soup-ladle.json")) {
      Files.copy(in, file);
    }
    boat = file.toString();
    folder = temp.resolve("kept").toString();
  }

  @ParameterizedTest
  @CsvSource({
    "LIMITS_CREW, MEETS, 0",
    "LIMITS_CREW, BORDERLINE, 1",
    "LIMITS_CREW, FALLS_SHORT, 1",
    "LIMITS_CREW, NOT_ASSESSED, 1",
    "FORBIDS_AN_ACT, FALLS_SHORT, 0",
    "INFORMATION, NOT_ASSESSED, 0"
  })
  void the_exit_code_tells_whether_something_that_limits_crew_holds_back(
      Role role, Outcome outcome, int code) {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> MadeUpReports.with(role, outcome));

    assertThat(shell.run("inspect", "--boat", boat, "--folder", folder)).isEqualTo(code);
    assertThat(shell.err()).isEmpty();
  }

  @Test
  void a_recommendation_withheld_is_told_by_the_exit_code() {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> MadeUpReports.withheld());

    assertThat(shell.run("inspect", "--boat", boat, "--folder", folder)).isEqualTo(1);
  }

  @Test
  void one_screen_is_printed_and_page_prints_the_page_as_it_is_kept() throws IOException {
    TestShell shell = TestShell.withAllPapers((b, r, d) -> GOOD);
    TestShell page = TestShell.open();

    shell.run("inspect", "--boat", boat, "--folder", folder);
    page.run("page", "--folder", folder);

    String record = only(".json").toString().replaceFirst("\\.json$", "");
    List<String> screen = Screen.of(kept(), Screen.ROWS);
    assertThat(shell.out())
        .startsWith(screen.get(0) + "\n")
        .endsWith(
            """

            Record: #.json
            Next:   Type page for the whole page (with the same --folder). Page and card are
                    next to the record. Inspect again after any change.
            """
                .replace("#", record))
        .doesNotContain("Note: ");
    assertThat(shell.err()).isEmpty();
    assertThat(page.out())
        .isEqualTo(Files.readString(Path.of(record + ".txt")).stripTrailing() + "\n");
  }

  @Test
  void the_pages_say_which_record_they_lie_beside_and_none_is_half_written() throws IOException {
    TestShell shell = TestShell.withAllPapers((b, r, d) -> GOOD);

    shell.run("inspect", "--boat", boat, "--folder", folder);

    Path record = only(".json");
    String number = record.getFileName().toString().replaceFirst("\\.json$", "");
    for (String ending : List.of(".txt", ".html", "-card.txt", "-card.html")) {
      assertThat(record.resolveSibling(number + ending)).content().contains("Record " + number);
    }
    for (String ending : List.of(".pdf", "-card.pdf")) {
      assertThat(record.resolveSibling(number + ending)).isNotEmptyFile();
    }
    try (var files = Files.list(record.getParent())) {
      assertThat(files).hasSize(8).noneMatch(file -> file.toString().endsWith(".part"));
    }
  }

  @Test
  void json_stands_alone_on_the_output_and_the_record_is_kept_all_the_same() throws IOException {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);

    shell.run("inspect", "--boat", boat, "--json", "--folder", folder);

    assertThat(ReportJson.parse(shell.out(), "output")).isEqualTo(kept().report());
    assertThat(shell.out()).startsWith("{").endsWith("}\n");
  }

  @Test
  void the_record_says_when_by_whom_and_with_which_version() throws IOException {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);

    shell.run("inspect", "--boat", boat, "--by", "Ann Lee", "--folder", folder);

    InspectionRecord kept = kept();
    assertThat(kept.by()).isEqualTo("Ann Lee");
    assertThat(kept.date().toInstant()).isEqualTo(TestShell.NOON.instant());
    assertThat(kept.programVersion()).isEqualTo("0.0.1-test");
    assertThat(kept.boat().name()).isEqualTo("Soup Ladle");
  }

  @Test
  void without_a_name_whoever_measured_the_boat_is_not_made_up() throws IOException {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);

    shell.run("inspect", "--boat", boat, "--folder", folder);

    assertThat(kept().by()).isEqualTo("somebody not named");
  }

  @Test
  void a_file_that_is_not_there_is_one_line_and_nothing_is_written() {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);

    assertThat(shell.run("inspect", "--boat", boat + "x", "--folder", folder)).isEqualTo(2);

    assertThat(shell.out()).isEmpty();
    assertThat(shell.err().lines()).hasSize(1).first().asString().contains("my boat.jsonx");
    assertThat(temp.resolve("kept")).doesNotExist();
  }

  @Test
  void measurements_that_contradict_each_other_are_one_line_and_nothing_is_written() {
    TestShell shell =
        TestShell.whoseInspection(
            (b, r, d) -> {
              throw new UnusableBoat("The chambers overlap. Move one.");
            });

    assertThat(shell.run("inspect", "--boat", boat, "--folder", folder)).isEqualTo(2);

    assertThat(shell.err()).isEqualTo(boat + ": The chambers overlap. Move one.\n");
    assertThat(temp.resolve("kept")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"x\": [1.55, 1.83] | \"x\": [1.55, 2.95]"
            + " | Chambers \"fore locker\" and \"midships thwart\" overlap by",
        "\"x\": 1.69 | \"x\": 6.9 | Place \"midships thwart\": x is 6.90 m, outside the"
      })
  void what_only_the_built_hull_shows_is_refused_with_the_file_and_nothing_is_written(
      String right, String wrong, String message) throws IOException {
    Path file = Path.of(boat);
    String text = Files.readString(file);
    assertThat(text).contains(right);
    Files.writeString(file, text.replace(right, wrong));
    TestShell shell = TestShell.open();

    assertThat(shell.run("inspect", "--boat", boat, "--folder", folder)).isEqualTo(2);

    assertThat(shell.out()).isEmpty();
    assertThat(shell.err()).startsWith(boat + ": " + message).hasLineCount(1);
    assertThat(temp.resolve("kept")).doesNotExist();
  }

  @Test
  void our_own_fault_is_one_line_and_nothing_is_written() {
    TestShell shell =
        TestShell.whoseInspection(
            (b, r, d) -> {
              throw new ArithmeticException("no root");
            });

    assertThat(shell.run("inspect", "--boat", boat, "--json", "--folder", folder)).isEqualTo(2);

    assertThat(shell.out()).isEmpty();
    assertThat(shell.err())
        .isEqualTo(
            "Something went wrong inside thwartwise: ArithmeticException (no root); no record was"
                + " written. Please report this with the boat file.\n");
    assertThat(temp.resolve("kept")).doesNotExist();
  }

  @Test
  void a_name_no_file_can_have_is_refused() {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);

    assertThat(shell.run("inspect", "--boat", "a\0b", "--folder", folder)).isEqualTo(2);

    assertThat(shell.err())
        .isEqualTo("\"a?b\" cannot be a file or folder name. Type another one.\n");
  }

  @Test
  void a_rule_written_by_hand_changes_the_answer() throws IOException {
    assertThat(TestShell.withoutAdvice().run("inspect", "--boat", boat, "--folder", folder))
        .isNotEqualTo(2);
    Report before = kept().report();
    assertThat(before.recommendation().crew()).isGreaterThan(60);
    String other = temp.resolve("other").toString();

    inspectUnder(temp.resolve("pond.json"), other, "--rules", temp.resolve("pond.json").toString());

    Report after = RecordFile.read(only(".json", other)).report();
    assertThat(after.recommendation().crew()).isEqualTo(60);
    assertThat(after.recommendation().load()).isLessThan(before.recommendation().load());
    assertThat(after.capacityFigures())
        .anyMatch(f -> f.ruleSet().equals("Mill pond") && f.takesPart() && f.value() == 60);
    assertThat(page(other)).contains("Published rules for comparison: page 4");
  }

  @Test
  void a_rule_in_the_folder_is_applied_every_time() throws IOException {
    inspectUnder(Path.of(folder, "rules", "pond.json"), folder);

    assertThat(kept().report().recommendation().crew()).isEqualTo(60);
  }

  @Test
  void more_than_one_rule_can_be_named() throws IOException {
    Path pond = temp.resolve("pond.json");
    Path harbour = temp.resolve("harbour.json");
    Files.writeString(harbour, POND.replace("Mill pond", "Harbour").replace("60", "57"));

    inspectUnder(pond, folder, "--rules", pond.toString(), "--rules=" + harbour);

    assertThat(kept().report().recommendation().crew()).isEqualTo(57);
  }

  @ParameterizedTest
  @CsvSource({"true", "false"})
  void a_wrong_rule_is_one_line_that_names_its_file_and_nothing_is_written(boolean named)
      throws IOException {
    Path rules = named ? temp.resolve("pond.json") : Path.of(folder, "rules", "pond.json");
    Files.createDirectories(rules.getParent());
    Files.writeString(rules, POND.replace("\"kg\"", "\"kilos\""));
    TestShell shell = TestShell.open();

    int code =
        named
            ? shell.run("inspect", "--boat", boat, "--folder", folder, "--rules", rules.toString())
            : shell.run("inspect", "--boat", boat, "--folder", folder);

    assertThat(code).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(
            rules
                + ": formula 1: the key \"kilos\" is not known here; the nearest known one is"
                + " \"title\". Correct it or take it out.\n");
    assertThat(Path.of(folder, "records")).doesNotExist();
  }

  private static final String POND =
      """
      { "format": "thwartwise/rules/1", "name": "Mill pond", "edition": "2026",
        "appliesTo": "boats on the mill pond",
        "formulas": [ { "formula": "kilograms of people at most", "kg": 60,
                        "basis": "READ", "source": "a board at the slipway" } ] }
      """;

  private void inspectUnder(Path rules, String kept, String... more) throws IOException {
    Files.createDirectories(rules.getParent());
    Files.writeString(rules, POND);
    List<String> words = new ArrayList<>(List.of("inspect", "--boat", boat, "--folder", kept));
    words.addAll(List.of(more));
    TestShell shell = TestShell.withoutAdvice();
    assertThat(shell.run(words.toArray(String[]::new))).isNotEqualTo(2);
    assertThat(shell.err()).isEmpty();
  }

  private String page(String kept) throws IOException {
    return Files.readString(only(".txt", kept)).replace('\u00a0', ' ');
  }

  private InspectionRecord kept() throws IOException {
    return RecordFile.read(only(".json"));
  }

  private Path only(String ending) throws IOException {
    return only(ending, folder);
  }

  private static Path only(String ending, String kept) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(kept, "records"))) {
      List<Path> found =
          files
              .filter(f -> f.toString().endsWith(ending) && !f.toString().contains("-card."))
              .toList();
      assertThat(found).hasSize(1);
      return found.get(0);
    }
  }
}
