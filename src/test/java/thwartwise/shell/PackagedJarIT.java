package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.archive.RecordFile;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.report.ReportJson;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitSystem;
import thwartwise.walk.engine.Answer;

/** The packaged jar, driven as a person or a script would. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@Execution(ExecutionMode.CONCURRENT) // Tests in an order run one by one otherwise.
class PackagedJarIT {
  private static final WalkSheet SHEET = new WalkSheet();

  /** Where what is found makes no difference. */
  private static final WalkSheet UNDER_SAIL = WalkSheet.underSail();

  @TempDir Path folder;
  private PackagedJar jar;

  @BeforeEach
  void set_out() {
    jar = new PackagedJar(folder).with("TERM", "xterm-256color");
  }

  /**
   * The one inspection of a boat of some size; all others are of a pram. It begins first, so that
   * others run next to it and none is left waiting for it.
   */
  @Test
  @Order(1)
  void the_prompt_appears_the_demo_runs_and_quit_leaves() throws Exception {
    try (Typist typist = Typist.at(jar.asItsLauncherRunsIt(), folder)) {
      typist.sees("thwartwise> ").types("demo");
      typist.sees("Record: ").sees("Next: ");
      typist.sees("thwartwise> ").types("quit");

      assertThat(typist.exitCode()).isZero();
      assertThat(Typist.flat(typist.readable())).contains(Typist.flat(shownInReadme()));
    }
    assertThat(records()).hasSize(1);
    assertThat(BoatFile.read(workspace().boatPath(demo().name()))).isEqualTo(demo());
    assertThat(
            records()
                .get(0)
                .resolveSibling(InspectionOutput.recordNumber(records().get(0)) + ".pdf"))
        .exists();
    // No library keeps a list of fonts, or anything else, in the home folder.
    try (Stream<Path> home = Files.list(folder)) {
      assertThat(home).containsExactly(folder.resolve("thwartwise"));
    }
  }

  /** What README shows of the demo, up to where its record is, which is another one each time. */
  private static String shownInReadme() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    int first = readme.indexOf("    Custard Tart: ");
    return readme.substring(first, readme.indexOf("    Record: ", first));
  }

  @Test
  void ctrl_c_at_the_prompt_does_not_leave_and_ctrl_d_does() throws Exception {
    try (Typist typist = Typist.at(jar, folder)) {
      typist.sees("thwartwise> ").presses("dem" + Typist.CTRL_C);
      typist.sees("to leave.").sees("thwartwise> ").types("version");
      typist.sees("thwartwise 0.").sees("thwartwise> ").presses(Typist.CTRL_D);

      assertThat(typist.exitCode()).isZero();
    }
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void tab_completes_commands_and_lists_options_without_colours() throws Exception {
    try (Typist typist = Typist.at(jar, folder)) {
      typist.sees("thwartwise> ").presses("insp\t");
      typist.sees("inspect ").presses("--\t");
      // They stand in columns: --because above --boat, --by above --corrects.
      typist.sees("--by").sees("--folder").sees("--boat").sees("--json");
      typist.presses(Typist.CTRL_C).sees("thwartwise> ").presses(Typist.CTRL_D);

      assertThat(typist.exitCode()).isZero();
      assertThat(typist.raw()).doesNotContainPattern("\u001b\\[(3|4|9|10)\\d");
    }
  }

  @Test
  void tab_completes_answers_and_lists_what_may_be_typed() throws Exception {
    try (Typist typist = Typist.at(jar, folder, "walk")) {
      typist.sees("Your own boat").presses("ow\t").sees("own").types("");
      typist.sees("The boat (name").types("Tin Spoon");
      typist.sees("Who measures").presses("\t").sees("back").sees("stop").types("");
      typist.sees("Units").presses("f\t").sees("feet").types("").sees("Water (fresh, salt)");
      typist.kill();
    }
  }

  /** Two programs, so that nothing within one of them can hide that the lock was let go. */
  @Test
  void a_second_terminal_may_look_and_no_more_until_the_first_is_gone() throws Exception {
    List<WalkSheet.Turn> turns = SHEET.turns();
    try (Typist first = Typist.at(jar, folder, "walk");
        Typist second = secondAfter(first, turns)) {
      for (int turn = 0; turn < 2; turn++) {
        second.types("").sees("open in another terminal").sees("Bath Mat").sees("[Enter: 1]:");
      }
      first.types(turns.get(4).typed()).sees(turns.get(5).prompt()).kill();
      second.types("").sees(turns.get(5).prompt());
      second.kill();
    }
  }

  private Typist secondAfter(Typist first, List<WalkSheet.Turn> turns) throws Exception {
    answer(first, turns.subList(0, 4));
    first.sees(turns.get(4).prompt());
    return Typist.at(jar, folder, "walk").sees("\"Bath Mat\", 4 answers").sees("[Enter: 1]:");
  }

  @ParameterizedTest
  @ValueSource(strings = {"metric", "feet"})
  void a_whole_walk_leads_from_the_prompt_to_a_record_that_inspect_agrees_with(String units)
      throws Exception {
    try (Typist typist = Typist.at(jar, folder)) {
      typist.sees("thwartwise> ").types("walk");
      answer(typist, new WalkSheet(units.equals("metric")).turns());
      typist.sees("Record: ").sees("Next: ").sees("Look over").types("");
      typist.sees("thwartwise> ").types("quit");

      assertThat(typist.exitCode()).isZero();
    }
    assertThat(RecordFile.read(records().get(0)).boat().in(UnitSystem.METRIC))
        .isEqualTo(SHEET.boat());
    Report walked = RecordFile.read(records().get(0)).report();
    assertThat(workspace().drafts()).isEmpty();
    assertThat(units.equals("metric") ? printedByInspect() : keptByInspect()).isEqualTo(walked);
  }

  private Report printedByInspect() throws Exception {
    Path boat = workspace().boatPath("Bath Mat");
    var outcome = jar.run("inspect", "--boat", boat.toString(), "--json");
    return ReportJson.parse(outcome.out(), "output");
  }

  private static Report keptByInspect() throws Exception {
    return RecordFile.read(recordsIn(inspectedOnce().workspace()).get(0)).report();
  }

  @Test
  void a_walk_killed_in_the_middle_goes_on_where_it_was() throws Exception {
    List<WalkSheet.Turn> turns = UNDER_SAIL.turns();
    try (Typist typist = Typist.at(jar, folder, "walk")) {
      answer(typist, turns.subList(0, 12));
      typist.sees(turns.get(12).prompt());
      typist.kill();
    }
    try (Typist typist = Typist.at(jar, folder, "walk")) {
      typist.sees("\"Bath Mat\", 12 answers").sees("[Enter: 1]:").types("");
      answer(typist, turns.subList(12, turns.size()));
      typist.sees("Record: ").sees("Look over").types("");

      assertThat(typist.exitCode()).isIn(0, 1);
    }
    assertThat(records()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {Typist.CTRL_C, Typist.CTRL_D})
  void ctrl_c_and_ctrl_d_keep_the_answers_and_return_to_the_prompt(String keys) throws Exception {
    try (Typist typist = Typist.at(jar, folder)) {
      typist.sees("thwartwise> ").types("walk");
      answer(typist, SHEET.turns().subList(0, 3));
      typist.sees(SHEET.turns().get(3).prompt()).presses(keys);
      typist.sees("Stopped. Your 3 answers are kept.").sees("Type walk again to go on.");
      typist.sees("thwartwise> ").types("quit");

      assertThat(typist.exitCode()).isZero();
    }
    assertThat(Draft.in(workspace())).hasSize(1);
    assertThat(Draft.in(workspace()).get(0).answers()).hasSize(3);
  }

  @Test
  void a_terminal_that_can_only_print_shows_each_letter_once() throws Exception {
    jar.with("TERM", "dumb").with("LC_ALL", "C").with("NO_COLOR", "1");
    try (Typist typist = Typist.at(jar, folder)) {
      typist.sees("thwartwise> ").presses("vers" + Typist.CTRL_C);
      typist.sees("to leave.").sees("thwartwise> ").types("help Häschen");
      typist.sees("Unknown command \"Häschen\".").sees("thwartwise> ").presses(Typist.CTRL_D);

      assertThat(typist.exitCode()).isZero();
      assertThat(typist.screen()).containsOnlyOnce("help Häschen").doesNotContain("\u001b");
    }
  }

  @Test
  void a_one_shot_inspection_that_falls_short_exits_with_one_and_says_nothing_on_the_error_stream()
      throws Exception {
    var outcome = inspectedOnce().outcome();

    assertThat(outcome.code()).isEqualTo(1);
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out().lines()).hasSizeLessThanOrEqualTo(24);
    assertThat(outcome.out()).contains("\nRecord: ");
    copy(inspectedOnce().workspace().folder(), workspace().folder());
    var page = jar.run("page");
    assertThat(page.code()).isZero();
    assertThat(page.out()).contains("by Ann Lee").contains("What nobody may do");
  }

  /** One inspection of a boat measured in feet, and the folder it left. */
  private record Inspected(PackagedJar.Outcome outcome, Workspace workspace) {
    static Inspected in(Path folder) throws Exception {
      Boat feet = SHEET.boat().in(UnitSystem.FEET_INCHES_POUNDS);
      Path boat = new Workspace(folder.resolve("given")).saveBoat(feet);
      var outcome =
          new PackagedJar(folder).run("inspect", "--boat", boat.toString(), "--by", "Ann Lee");
      return new Inspected(outcome, new Workspace(folder.resolve("thwartwise")));
    }
  }

  @TempDir static Path shared;
  private static Inspected once;

  /** For every test that begins with a boat inspected before; it takes ten seconds. */
  private static synchronized Inspected inspectedOnce() throws Exception {
    once = once == null ? Inspected.in(shared) : once;
    return once;
  }

  @Test
  void a_one_shot_in_json_prints_one_document_in_utf_8_whatever_locale_and_environment()
      throws Exception {
    Files.writeString(folder.resolve("application.properties"), "debug=true\n");
    Path boat = folder.resolve("boat.json");
    Files.writeString(boat, BoatFile.write(UNDER_SAIL.boat()).replace("Bath Mat", "Käsekuchen"));

    var outcome =
        jar.with("LC_ALL", "C")
            .with("DEBUG", "true")
            .run("inspect", "--boat", boat.toString(), "--json");

    assertThat(ReportJson.parse(outcome.out(), "output").boat()).isEqualTo("Käsekuchen");
    assertThat(outcome.err()).isEmpty();
  }

  @Test
  void a_file_that_cannot_be_used_exits_with_two_one_line_and_nothing_written() throws Exception {
    var outcome = jar.run("inspect", "--boat", "no such boat.json", "--json");

    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().lines()).hasSize(1).first().asString().contains("no such boat.json");
    assertThat(folder.resolve("thwartwise")).doesNotExist();
  }

  @Test
  void a_name_the_locale_cannot_read_is_refused_and_nothing_is_written() throws Exception {
    var outcome =
        jar.with("LC_ALL", "C").run("demo", "--folder", folder.resolve("Käse").toString());

    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.err()).contains("do not come through in this language setting.");
    assertThat(folder.resolve("thwartwise")).doesNotExist();
  }

  @Test
  void words_nobody_knows_exit_with_two_and_name_the_nearest() throws Exception {
    var outcome = jar.run("inspect", "--baot", "b.json");

    assertThat(outcome)
        .isEqualTo(
            new PackagedJar.Outcome(
                2,
                "",
                "inspect: unknown option \"--baot\". Did you mean \"--boat\"? \"help inspect\" lists its options.\n"));
  }

  @Test
  void help_and_version_go_to_the_output() throws Exception {
    assertThat(jar.run("--help").out()).startsWith("thwartwise works out");
    assertThat(jar.run("version").out()).matches("thwartwise \\d+\\.\\d+\\.\\d+\n");
  }

  /**
   * A program that is killed leaves what lies in its folder at that moment. That is copied while
   * each question stands, and each copy is gone on with by one answer.
   */
  @Test
  void a_walk_killed_at_any_question_ends_as_if_it_had_not_been() throws Exception {
    List<WalkSheet.Turn> turns = UNDER_SAIL.turns();
    try (Typist typist = Typist.at(jar, folder, "walk")) {
      for (int asked = 0; asked < turns.size(); asked++) {
        typist.sees(turns.get(asked).prompt());
        copy(workspace().folder(), killedAt(asked));
        typist.types(turns.get(asked).typed());
      }
      typist.sees("Record: ").sees("Look over").types("later");
      assertThat(typist.exitCode()).isIn(0, 1);
    }
    assertThat(RecordFile.read(records().get(0)).boat()).isEqualTo(UNDER_SAIL.boat());
    for (int asked = 1; asked < turns.size() - 1; asked++) {
      assertThat(answersIn(killedAt(asked))).hasSize(asked);
      TestShell again = resume(asked, turns.get(asked).typed());
      assertThat(again.out()).contains(turns.get(asked + 1).prompt());
      assertThat(answersIn(killedAt(asked))).isEqualTo(answersIn(killedAt(asked + 1)));
    }
    int last = turns.size() - 1;
    resume(last, turns.get(last).typed());
    Workspace ended = new Workspace(killedAt(last));
    assertThat(BoatFile.read(ended.boatPath("Bath Mat"))).isEqualTo(UNDER_SAIL.boat());
  }

  private Path killedAt(int question) {
    return folder.resolve("killed at " + question);
  }

  private TestShell resume(int question, String typed) {
    TestShell again =
        TestShell.whoseInspection((b, r, d) -> MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS));
    again.typing("", typed).run("walk", "--folder", killedAt(question).toString());
    return again;
  }

  private static List<Answer> answersIn(Path folder) {
    List<Draft> drafts = Draft.in(new Workspace(folder));
    assertThat(drafts).hasSize(1);
    return drafts.get(0).answers();
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    if (Files.exists(from)) {
      try (Stream<Path> all = Files.walk(from)) {
        for (Path each : all.skip(1).toList()) {
          Files.copy(each, to.resolve(from.relativize(each).toString()));
        }
      }
    }
  }

  /** From the prompt to a record, in both systems: one boat. */
  @ParameterizedTest
  @ValueSource(strings = {"metric", "feet"})
  void a_borrowed_boat_leads_from_the_prompt_to_a_record(String units) throws Exception {
    boolean metric = units.equals("metric");
    try (Typist typist = Typist.at(jar, folder)) {
      typist.sees("thwartwise> ").types("walk");
      for (String[] turn : BORROWED) {
        typist.sees(turn[0]).types(turn[metric ? 1 : 2]);
      }
      typist.sees("Nobody and nothing goes aboard").sees("Next: ").sees("Look over").types("");
      typist.sees("thwartwise> ");
    }
    Boat boat = RecordFile.read(records().get(0)).boat();
    assertThat(boat.hull().stations().get(2).portRail().y()).isEqualTo(0.6858);
    assertThat(boat.hull().mass()).isEqualTo(68.0388555);
    assertThat(boat.places().get(1).x()).isEqualTo(2.4384);
  }

  private static final String[][] BORROWED = {
    {"Your own boat", "borrowed", "borrowed"},
    {"The boat (name", "Tin Spoon", "Tin Spoon"},
    {"Units", "metric", "feet"},
    {"Hull (length", "3.6576", "12'"},
    {"Across the middle", "round", "round"},
    {"Breadth over the rails, where", "1.3716", "54"},
    {"Depth from rail", "0.4572", "18"},
    {"Breadth over the rails at the stern", "1.2192", "4'"},
    {"Height of the lowest notch", "no", "no"},
    {"Empty, it weighs", "68.0388555", "150"},
    {"It is made of", "", ""},
    {"Seats across (", "2", "2"},
    {"Aftmost seat", "0.6096", "2'"},
    {"Foremost seat", "2.4384", "8'"},
    {"Height of the highest seat", "0.254", "10"},
    {"Motor and kit (", "no", "no"},
    {"All else that is carried", "4.5359237", "10"},
    {"Who goes", "", ""},
    {"What shows that it holds you up full", "nothing", "nothing"},
    {"Only sheltered, warm water", "yes", "yes"},
    {"Is the boat complete", "", ""}
  };

  @ParameterizedTest
  @ValueSource(strings = {"metric", "feet"})
  void a_refit_tells_what_the_second_battery_cost(String units) throws Exception {
    boolean metric = units.equals("metric");
    copy(inspectedOnce().workspace().folder(), workspace().folder());
    // Units make a difference to what is typed and not to what is found, which takes long.
    Path file = workspace().saveBoat((metric ? SHEET : UNDER_SAIL).boat());
    try (Typist typist = Typist.at(jar, folder, "refit")) {
      String[][] turns = {
        {"Which boat", "bath"},
        {"Units", units},
        {"What has changed", "added"},
        {"Kit 1 (name", "second battery"},
        {", mass", metric ? "22.6796185" : "50"},
        {"forward of the aft end", metric ? "0.7112" : "2' 4"},
        {"port of the middle", "0"},
        {"height of its middle", metric ? "0.1524" : "6"},
        {"is it fastened", "yes"},
        {"its own volume", ""},
        {"What else has changed", ""},
        {"Is the boat complete", ""}
      };
      for (String[] turn : turns) {
        typist.sees(turn[0]).types(turn[1]);
      }
      typist.sees("In short: ").sees("Every figure: compare ").sees("Record: ");
      typist.sees("Look over").types("later");
      assertThat(typist.exitCode()).isEqualTo(1);
    }
    assertThat(records()).hasSize(2);
    Boat boat = BoatFile.read(file);
    assertThat(boat.kit()).last().extracting(Kit::mass).isEqualTo(22.6796185);
    assertThat(boat.kit()).last().extracting(Kit::at).isEqualTo(Vector3.of(0.7112, 0, 0.1524));
  }

  @Test
  void answers_may_come_from_a_pipe() throws Exception {
    String lines = String.join("\n", UNDER_SAIL.lines()) + "\n";

    var outcome = jar.with("LC_ALL", "C").runWithInput(lines, "walk");

    assertThat(outcome.code()).isIn(0, 1);
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out()).contains("\nRecord: ").doesNotContain("\r");
    assertThat(records()).hasSize(1);
  }

  @Test
  void commands_may_come_from_a_pipe() throws Exception {
    var outcome = jar.runWithInput("version\nquit\n");

    assertThat(outcome.code()).isZero();
    assertThat(outcome.out()).contains("thwartwise> version\nthwartwise 0.");
  }

  private static void answer(Typist typist, List<WalkSheet.Turn> turns) throws Exception {
    for (WalkSheet.Turn turn : turns) {
      typist.sees(turn.prompt()).types(turn.typed());
    }
  }

  private Workspace workspace() {
    return new Workspace(folder.resolve("thwartwise"));
  }

  private List<Path> records() throws IOException {
    return recordsIn(workspace());
  }

  private static List<Path> recordsIn(Workspace workspace) throws IOException {
    try (Stream<Path> files = Files.walk(workspace.folder().resolve("records"))) {
      return files.filter(file -> file.toString().endsWith(".json")).toList();
    }
  }

  private static Boat demo() {
    return DemoCommand.asOf(LocalDate.now(ZoneId.systemDefault()));
  }
}
