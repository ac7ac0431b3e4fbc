package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.walk.stations.StationTable;

/** A table of stations given to the walk, from a file and pasted, at its own question. */
class StationsOptionTest {
  private static final WalkSheet SHEET = new WalkSheet();

  /** The stations of the sheet. */
  private static final String TABLE =
      """
      aft, 0, 0.0635, 0.4064, 0.0762, 0.5207, 0.4445
      middle, 1.2192, 0, 0.4826, 0.0254, 0.6096, 0.4191
      fore, 2.4384, 0.1016, 0.2286, 0.127, 0.3302, 0.508
      """;

  private static final String ASKED = "Is this your boat? yes takes the table";

  @TempDir Path folder;
  private final TestShell shell =
      TestShell.whoseInspection(
          (b, r, d) ->
              MadeUpReports.with(
                  thwartwise.checks.Role.LIMITS_CREW, thwartwise.checks.Outcome.MEETS));

  private String file(String table) throws IOException {
    return Files.writeString(folder.resolve("plan.csv"), table).toString();
  }

  private int walk(String... more) {
    return shell.run(
        Stream.concat(Stream.of("walk", "--folder", folder.toString()), Arrays.stream(more))
            .toArray(String[]::new));
  }

  private static String[] before() {
    return SHEET.linesBefore("How many stations");
  }

  /** Both sides are alike, and what is typed once the stations are known. */
  private static String[] after() {
    Stream<String> rest =
        SHEET.turns().stream()
            .dropWhile(turn -> !turn.prompt().startsWith("Does this look like"))
            .map(WalkSheet.Turn::typed);
    return Stream.concat(Stream.of("yes"), rest).toArray(String[]::new);
  }

  @Test
  void yes_to_a_table_from_a_file_makes_the_boat_of_the_single_answers() throws IOException {
    String file = file(TABLE);
    shell.typing(before()).typing("yes").typing(after());
    assertThat(walk("--stations", file)).as(shell.out()).isZero();
    assertThat(shell.out()).contains("Read in metres: 3 stations", ASKED, "  Taken. list shows");
    Boat typed = BoatFile.read(new Workspace(folder).boatPath("Bath Mat"));
    assertThat(typed.hull().stations().stream().map(s -> s.port()))
        .isEqualTo(SHEET.boat().hull().stations().stream().map(s -> s.port()).toList());
  }

  @Test
  void no_and_enter_take_nothing_of_it_and_the_question_stands() throws IOException {
    for (String no : List.of("no", "", "perhaps")) {
      TestShell asked = TestShell.open();
      asked
          .typing(before())
          .typing(no, "list", "stop")
          .run("walk", "--folder", folder.resolve("x" + no).toString(), "--stations", file(TABLE));
      assertThat(asked.out())
          .contains("  Nothing of the table was taken.\n")
          .doesNotContain("Taken. list shows")
          .endsWith("\n");
      String listed = asked.out().substring(asked.out().indexOf("  Nothing of the table"));
      assertThat(listed).contains("Stopped. Your " + before().length + " answers are kept.");
      assertThat(listed).doesNotContain("Station 1");
    }
  }

  @Test
  void a_table_is_pasted_after_its_word_and_ended_by_end() {
    shell.typing(before()).typing("table").typing(TABLE.split("\n")).typing("end", "yes", "stop");
    assertThat(walk()).isEqualTo(2);
    assertThat(shell.out())
        .contains("Paste the rows here; end, or Enter twice, ends the table.\n")
        .contains("  Taken. list shows every figure; change and its number mends one.\n");
  }

  @Test
  void a_table_may_begin_with_its_first_row_in_place_of_the_word() {
    shell.typing(before()).typing(TABLE.split("\n")).typing("end", "yes", "stop");
    assertThat(walk()).isEqualTo(2);
    assertThat(shell.out()).contains("Read in metres: 3 stations", "  Taken. list shows every");
  }

  @Test
  void a_file_that_is_no_table_is_told_before_the_first_question() throws IOException {
    String file = file("aft, 0, 0, much, 1\n");
    assertThat(walk("--stations", file)).isEqualTo(2);
    assertThat(shell.err()).startsWith(file + ": Line 1, column ").hasLineCount(1);
    assertThat(shell.out()).isEmpty();
  }

  @Test
  void a_file_that_is_not_there_is_told_in_one_line() {
    String none = folder.resolve("none.csv").toString();
    assertThat(walk("--stations", none)).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(none + ": there is no such file. Check the name and the folder.\n");
  }

  /** Whoever copies an example of the page is understood. */
  @Test
  void the_tables_of_help_stations_are_taken() {
    assertThat(shell.run("help", "stations")).isZero();
    List<String> examples =
        Arrays.stream(shell.out().split("\n\n"))
            .filter(part -> part.lines().allMatch(line -> line.startsWith("  ")))
            .map(part -> part.lines().map(String::strip).collect(Collectors.joining("\n")))
            .toList();
    assertThat(examples).hasSize(2);
    assertThat(examples).allMatch(table -> StationTable.fault(table).isEmpty());
    assertThat(StationTable.fault(examples.get(1).replace("1-11-0", "x"))).isPresent();
  }

  @Test
  void help_sheet_names_its_options_and_the_word_for_the_units() {
    assertThat(shell.run("help", "sheet")).isZero();
    assertThat(shell.out())
        .startsWith("sheet: ")
        .contains("Usage: sheet", "--boat", "--units", "--paper", "--folder DIR");
    assertThat(shell.out().lines()).allMatch(line -> line.length() <= 80);
  }
}
