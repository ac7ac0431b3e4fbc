package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.boat.BoatFile;
import thwartwise.hull.UnusableBoat;
import thwartwise.inspection.Report;
import thwartwise.walk.Walk;

class WalkCommandTest {
  private static final Report GOOD = MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS);
  private static final Report SHORT = MadeUpReports.with(Role.LIMITS_CREW, Outcome.FALLS_SHORT);
  private static final WalkSheet SHEET = new WalkSheet();

  @TempDir Path folder;

  @Test
  void a_walk_to_the_end_leaves_a_boat_file_a_record_and_no_draft() {
    TestShell shell = shell();

    assertThat(walk(shell.typing(SHEET.lines()))).isZero();

    Path file = workspace().boatPath("Bath Mat");
    assertThat(BoatFile.read(file).name()).isEqualTo("Bath Mat");
    assertThat(shell.out())
        .startsWith(Walk.OPENING + "\n")
        .contains("\nRecord: " + folder.resolve("records"));
    assertThat(workspace().drafts()).isEmpty();
    assertThat(shell.err()).isEmpty();
  }

  private static String[] linesAnd(String... more) {
    return Stream.concat(Stream.of(SHEET.lines()), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void a_look_is_offered_at_the_end_and_can_wait() {
    TestShell shell = shell();

    assertThat(walk(shell.typing(linesAnd("later")))).isZero();

    assertThat(shell.out())
        .containsPattern(
            "\nLook over the fittings now, about \\d+ min\\? \\(yes, later\\) \\[Enter: later\\]: ")
        .contains("Later, then: until somebody looks, each of them counts as not looked at.");
    assertThat(BoatFile.read(workspace().boatPath("Bath Mat")).pointAnswers()).isEmpty();
  }

  @Test
  void the_offer_of_a_look_is_made_again_after_anything_else_and_takes_yes_in_other_words() {
    TestShell shell = shell();

    walk(shell.typing(linesAnd("inspect --boat X", "yep", "leave")));

    assertThat(shell.out())
        .contains("\"inspect --boat X\" is neither yes nor later. Type yes, or Enter for later.\n")
        .contains("points concern this boat");
  }

  /** After an hour of measuring it would be too late to hear of it. */
  @Test
  void a_wrong_checklist_is_told_before_the_first_question() throws IOException {
    Path club = Files.createDirectories(folder.resolve("checklists")).resolve("club.json");
    Files.writeString(club, "{ \"format\": \"thwartwise/checklist/1\", \"name\": \"Club\" }");
    TestShell shell = shell();
    assertThat(walk(shell.typing(SHEET.lines()))).isEqualTo(2);
    assertThat(shell.err())
        .startsWith(club + ": the key \"points\" is missing. Write at least one, as in");
    assertThat(shell.out()).isEmpty();
  }

  /** The line after a walk in a pipe is the next command, whatever is offered. */
  @Test
  void nobody_who_pipes_a_walk_is_offered_a_look() {
    TestShell shell = shell().piped();

    shell.typing("walk --folder " + folder).typing(linesAnd("version", "quit")).openPrompt();

    assertThat(shell.out())
        .containsPattern("\nNot looked at by hand and eye: \\d\\d points\\. Type look\\.\n")
        .contains("thwartwise> version\nthwartwise ")
        .doesNotContain("Look over the fittings");
  }

  /** What was not come to stands as not looked at, and what is grave holds the boat back. */
  @Test
  void a_look_at_the_end_is_kept_with_the_boat_and_changes_the_exit_code() {
    TestShell shell = shell();

    assertThat(walk(shell.typing(linesAnd("yes", "no", "soft at the stem", "leave")))).isEqualTo(1);

    List<PointAnswer> answers = BoatFile.read(workspace().boatPath("Bath Mat")).pointAnswers();
    assertThat(answers).hasSizeGreaterThan(10);
    assertThat(answers.get(0).note()).isEqualTo("soft at the stem");
    assertThat(answers.get(0).by()).isEqualTo("Ann Lee");
    assertThat(answers.subList(1, answers.size()))
        .allMatch(answer -> answer.condition() == PointCondition.NOT_LOOKED_AT);
  }

  @Test
  void its_exit_code_is_that_of_the_inspection() {
    TestShell shell = TestShell.whoseInspection((b, r, d) -> SHORT);

    assertThat(walk(shell.typing(SHEET.lines()))).isEqualTo(1);
  }

  @Test
  void every_answer_is_on_disk_before_the_next_question_stands() {
    List<Integer> onDisk = new ArrayList<>();
    TestShell shell = shell().beforeEachAnswer(() -> onDisk.add(answersOnDisk()));

    walk(shell.typing(SHEET.firstLines(6)));

    assertThat(onDisk).containsExactly(0, 1, 2, 3, 4, 5, 6);
  }

  @Test
  void each_answer_is_repeated_in_the_unit_it_was_understood_in() {
    TestShell shell = shell();

    walk(shell.typing(SHEET.lines()));

    assertThat(shell.out()).containsPattern("\n  Mass of [^\n]*: 29\\.48\\d* kg\n");
  }

  private static final String HULL =
      "The hull (length; stations, 5; points at each, 3; sides alike: yes or no): ";

  @Test
  void a_length_in_feet_is_repeated_in_metres_as_readme_shows_it() throws IOException {
    List<String> shown =
        Files.readString(Path.of("README.md"))
            .lines()
            .dropWhile(line -> !line.startsWith("    " + HULL))
            .limit(2)
            .map(String::strip)
            .toList();
    TestShell shell = shell();
    String typed = shown.get(0).substring(HULL.length());

    walk(shell.typing(SHEET.linesBefore("The hull (length")).typing(typed));

    assertThat(shell.out()).contains(shown.get(0) + "\n  " + shown.get(1) + "\n");
  }

  @Test
  void the_end_of_the_input_keeps_the_answers_and_says_how_to_go_on() {
    TestShell shell = shell();

    assertThat(walk(shell.typing(SHEET.firstLines(5)))).isEqualTo(2);

    assertThat(shell.out())
        .endsWith(
            """
            Stopped. Your 5 answers are kept.
            Type walk again with the same --folder to go on.
            """);
    assertThat(answersOnDisk()).isEqualTo(5);
  }

  @Test
  void ctrl_c_and_stop_keep_the_answers_too() {
    walk(shell().typing(SHEET.firstLines(4)).typing(TestShell.CTRL_C, "lost"));
    assertThat(answersOnDisk()).isEqualTo(4);

    TestShell shell = shell();
    walk(shell.typing("1", SHEET.linesFrom(4)[0], "stop"));
    assertThat(answersOnDisk()).isEqualTo(5);
    assertThat(shell.out()).contains("Stopped. Your 5 answers are kept.\n");
  }

  @Test
  void leaving_before_the_first_answer_leaves_nothing_behind() {
    TestShell shell = shell();
    walk(shell);

    assertThat(folder).isEmptyDirectory();
    assertThat(shell.out()).contains("Stopped. Nothing was answered yet.\n");
  }

  @Test
  void an_unfinished_walk_is_offered_and_goes_on_where_it_was_left() {
    walk(shell().typing(SHEET.firstLines(20)));
    TestShell shell = shell();

    assertThat(walk(shell.typing("").typing(SHEET.linesFrom(20)))).isZero();

    assertThat(shell.out())
        .startsWith(
            """
            Walks kept here that are not finished:
              1. "Bath Mat", 20 answers
            Go on with which? 1, new for another boat, or drop 1 [Enter: 1]:\s
            """);
    assertThat(workspace().drafts()).isEmpty();
  }

  @Test
  void a_new_walk_may_be_begun_beside_an_unfinished_one() {
    Draft other = new Draft(workspace(), "walk-2026-05-01-090000");
    other.save(List.of(new thwartwise.walk.engine.Answer("name", "Gravy Boat")));

    assertThat(walk(shell().typing("new").typing(SHEET.lines()))).isZero();

    assertThat(workspace().drafts()).containsExactly("walk-2026-05-01-090000");
  }

  @Test
  void a_number_nobody_offered_is_asked_again() {
    walk(shell().typing(SHEET.firstLines(2)));
    TestShell shell = shell();

    walk(shell.typing("2", "no", "1", "stop"));

    assertThat(shell.out())
        .containsOnlyOnce("\"Bath Mat\", 2 answers\n")
        .contains("[Enter: 1]: 2\nType one of the numbers above, new, or drop and a number.\n")
        .contains("[Enter: 1]: no\nType one of the numbers above, new, or drop and a number.\n")
        .contains("Stopped. Your 2 answers are kept.\n");
  }

  @Test
  void nonsense_is_refused_with_a_reason_and_the_question_stands() {
    TestShell shell = shell();
    String[] first = SHEET.firstLines(4);

    walk(shell.typing(first[0], first[1], first[2], "furlongs", first[3]));

    String prompt = SHEET.turns().get(3).prompt();
    assertThat(shell.out())
        .containsPattern(
            java.util.regex.Pattern.quote(prompt + " furlongs\n")
                + "[^\n]*\"furlongs\"[^\n]*\n"
                + java.util.regex.Pattern.quote(prompt + " " + first[3]));
    assertThat(answersOnDisk()).isEqualTo(4);
  }

  @Test
  void back_is_on_disk_as_well() {
    walk(shell().typing(SHEET.firstLines(5)).typing("back"));

    assertThat(answersOnDisk()).isEqualTo(4);
  }

  @Test
  void measurements_at_odds_are_told_and_the_last_question_stands_again() {
    AtomicInteger runs = new AtomicInteger();
    TestShell shell =
        TestShell.whoseInspection(
            (b, r, d) -> {
              if (runs.getAndIncrement() == 0) {
                throw new UnusableBoat("The chambers overlap. Move one.");
              }
              return GOOD;
            });

    assertThat(walk(shell.typing(SHEET.lines()).typing(""))).isZero();

    assertThat(shell.out())
        .contains(
            "The chambers overlap. Move one.\n"
                + "Type list to find that answer, then change and its number.\n");
    assertThat(runs).hasValue(2);
  }

  @Test
  void our_own_fault_leaves_the_answers_and_nothing_else() {
    TestShell shell =
        TestShell.whoseInspection(
            (b, r, d) -> {
              throw new IllegalStateException("no root");
            });

    assertThat(walk(shell.typing(SHEET.lines()))).isEqualTo(2);

    assertThat(shell.err())
        .startsWith("Something went wrong inside thwartwise: IllegalStateException (no root);");
    assertThat(workspace().boatPath("Bath Mat")).doesNotExist();
    assertThat(answersOnDisk()).isEqualTo(SHEET.turns().size());
    assertThat(folder.resolve("records")).doesNotExist();
  }

  @Test
  void work_given_up_leaves_the_boat_file_and_the_answers_as_they_were() throws IOException {
    walk(shell().typing(SHEET.lines()));
    Path file = workspace().boatPath("Bath Mat");
    Files.writeString(file, "as it was");
    TestShell shell =
        TestShell.whoseInspection(
            (b, r, d) -> {
              throw new CancellationException();
            });

    assertThat(walk(shell.typing(SHEET.lines()))).isEqualTo(2);

    assertThat(shell.out())
        .endsWith(
            """
            Stopped. Nothing was written, and your answers are kept.
            Type walk again with the same --folder to go on.
            """);
    assertThat(file).hasContent("as it was");
    assertThat(answersOnDisk()).isEqualTo(SHEET.turns().size());
    assertThat(workspace().records().of("Bath Mat").entries()).hasSize(1);
  }

  @Test
  void a_damaged_draft_is_told_once_and_put_aside() throws IOException {
    Path damaged = folder.resolve("drafts/walk-2026-05-01-090000.json");
    Files.createDirectories(damaged.getParent());
    Files.writeString(damaged, "{");
    TestShell shell = shell();

    walk(shell.typing("stop"));

    assertThat(shell.out())
        .startsWith(
            damaged
                + ": line 1, column 2: the text ends too early. Close the open quote or bracket,"
                + " or copy it again. The walk in it was put aside as"
                + " walk-2026-05-01-090000.json.damaged; a text editor still shows its answers.\n");
    assertThat(folder.resolve("drafts/walk-2026-05-01-090000.json.damaged")).hasContent("{");
    TestShell again = shell();
    walk(again.typing("stop"));
    assertThat(again.out()).doesNotContain("put aside");
  }

  @Test
  void a_draft_of_a_newer_program_is_told_and_left_to_it() throws IOException {
    Path newer = folder.resolve("drafts/walk-2026-05-01-090000.json");
    Files.createDirectories(newer.getParent());
    Files.writeString(newer, "{ \"format\": \"thwartwise/draft/2\" }");
    TestShell shell = shell();

    walk(shell.typing("stop"));

    assertThat(shell.out())
        .startsWith(
            newer
                + ": this is a draft file of version 2 and this program reads version 1."
                + " A newer program is needed.\n");
    assertThat(newer).exists();
  }

  @Test
  void a_walk_that_came_to_its_end_can_be_taken_up_again() {
    walk(
        TestShell.whoseInspection(
                (b, r, d) -> {
                  throw new IllegalStateException("no root");
                })
            .typing(SHEET.lines()));

    assertThat(walk(shell().typing("1", ""))).isZero();
    assertThat(workspace().drafts()).isEmpty();
  }

  @Test
  void a_second_boat_of_the_same_name_is_told_to_take_the_place_of_the_first() {
    walk(shell().typing(SHEET.lines()));
    TestShell shell = shell();

    walk(shell.typing(SHEET.lines()));

    assertThat(shell.out())
        .contains("A boat file of that name is there already; this one takes its place.\n");
  }

  @Test
  void lines_fit_the_terminal() {
    TestShell shell = shell();

    walk(shell.typing(SHEET.lines()));

    String conversation = shell.out().substring(0, shell.out().indexOf("\nRecord: "));
    assertThat(conversation.lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void a_walk_open_in_another_terminal_may_only_be_looked_at() {
    walk(shell().typing(SHEET.firstLines(2)));
    Draft draft = Draft.in(workspace()).get(0);
    TestShell second = shell();

    try (var first = new DraftChoice.LockedDraft(draft, draft.lock().orElseThrow())) {
      assertThat(first.draft()).isEqualTo(draft);
      walk(second.typing("1"));
    }

    assertThat(second.out())
        .contains("That walk is open in another terminal. From here you may only look:\n")
        .contains("  2. Name of the boat: Bath Mat\n");
    assertThat(draft.answers()).hasSize(2);
    assertThat(draft.lock()).isPresent();
  }

  @Test
  void an_old_walk_can_be_thrown_away_and_only_when_that_is_said_twice() {
    walk(shell().typing(SHEET.firstLines(2)));

    walk(shell().typing("drop 1", ""));
    assertThat(workspace().drafts()).hasSize(1);

    walk(shell().typing("drop 1", "yes", "stop"));
    assertThat(workspace().drafts()).isEmpty();
  }

  @Test
  void yes_takes_what_was_meant_and_keep_what_was_typed() {
    TestShell shell = shell();
    String[] before = SHEET.linesBefore("Mass of the bare hull");

    walk(shell.typing(before).typing("190", "yes", "back", "850", "keep", "stop"));

    assertThat(shell.out().replace('\n', ' '))
        .contains("Type yes to take that, or keep to leave it as typed, or another.")
        .contains("Mass of the bare hull: 86.18 kg")
        .contains("Mass of the bare hull: 850 kg");
    assertThat(Draft.in(workspace()).get(0).answers())
        .contains(new thwartwise.walk.engine.Answer("hull.mass", "850 indeed"));
  }

  private static TestShell shell() {
    return TestShell.whoseInspection((b, r, d) -> GOOD);
  }

  private int walk(TestShell shell) {
    return shell.run("walk", "--folder", folder.toString());
  }

  private Workspace workspace() {
    return new Workspace(folder);
  }

  private int answersOnDisk() {
    return Draft.in(workspace()).stream().mapToInt(draft -> draft.answers().size()).sum();
  }
}
