package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.inspection.Report;

class TodayCommandTest {
  private static final Report GOOD = MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS);
  private static final int POINTS = 10;
  private static final String NOTHING_AGAINST =
      "\nNothing found against it today within the limits of this inspection.\n";

  @TempDir Path temp;
  private String boat;
  private String folder;
  private final TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);

  @BeforeEach
  void lay_out_a_boat_file() throws IOException {
    Path file = temp.resolve("my boat.json");
    try (var in = getClass().getResourceAsStream("/thwartwise/files/soup-ladle.json")) {
      Files.copy(in, file);
    }
    boat = file.toString();
    folder = temp.resolve("kept").toString();
  }

  private int run(TestShell at, String... more) {
    return at.run(
        Stream.concat(Stream.of("today", "--boat", boat, "--folder", folder), Stream.of(more))
            .toArray(String[]::new));
  }

  private static String[] yes(int times) {
    return Collections.nCopies(times, "yes").toArray(String[]::new);
  }

  @Test
  void yes_to_everything_ends_with_nothing_found_against_it_and_nought() {
    assertThat(run(shell.typing(yes(POINTS)))).isZero();

    assertThat(shell.out())
        .contains(NOTHING_AGAINST)
        .contains("* Local rules come first")
        .contains("not a capacity plate")
        .doesNotContain("Not today.");
    assertThat(shell.err()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"no", "don't know", "", "N", "dont know", "not sure", "skip"})
  void one_answer_that_is_not_yes_is_not_today_and_is_told_with_what_to_do(String answer) {
    assertThat(run(shell.typing(answer).typing(yes(POINTS - 1)))).isEqualTo(1);

    assertThat(shell.out())
        .contains("\nNot today.\n")
        .contains("So weigh everyone as they go afloat")
        .doesNotContain("Nothing found against it today")
        .doesNotContain("So read seats and the rest aloud");
  }

  @Test
  void questions_left_when_the_input_ends_stay_open() {
    assertThat(run(shell.typing(yes(POINTS - 1)))).isEqualTo(1);

    assertThat(shell.out())
        .contains("\nNot today.\n* Not answered: Was it tried how somebody in the water");
  }

  @Test
  void ctrl_c_leaves_everything_after_it_open() {
    assertThat(run(shell.typing("yes", TestShell.CTRL_C, "yes"))).isEqualTo(1);

    assertThat(shell.out().split("\\* Not answered", -1)).hasSize(POINTS);
  }

  @Test
  void what_is_neither_yes_nor_no_is_asked_again() {
    assertThat(run(shell.typing("perhaps later", "14 stone").typing(yes(POINTS)))).isZero();

    assertThat(shell.out())
        .contains("\"perhaps later\" is not one of them. Type yes, no or don't know.\n")
        .contains("\"14 stone\" is not one of them.");
  }

  @Test
  void back_list_and_why_work_as_in_the_walk() {
    assertThat(run(shell.typing("back", "list", "no", "list", "why", "back").typing(yes(POINTS))))
        .isZero();

    assertThat(shell.out())
        .contains("This is the first question; there is nothing to go back to.\n")
        .contains("No answers yet.\n")
        .contains("\n  1. People: no\n")
        .contains("\nAsked again. You had: People: no\n")
        .contains("Anything but yes to all of it is an")
        .contains(NOTHING_AGAINST);
    assertThat(shell.out().lines()).filteredOn(l -> l.startsWith("1 of ")).hasSize(2);
  }

  @Test
  void an_answer_is_changed_by_its_number_as_in_the_walk() {
    assertThat(run(shell.typing("no", "yes", "change 1").typing(yes(POINTS - 1)))).isZero();
  }

  @Test
  void stop_leaves_the_rest_open() {
    assertThat(run(shell.typing("yes", "stop", "yes"))).isEqualTo(1);

    assertThat(shell.out().split("\\* Not answered", -1)).hasSize(POINTS);
  }

  @Test
  void a_boat_that_is_held_is_not_today_at_once_and_nothing_is_asked() {
    TestShell held = TestShell.whoseInspection((b, r, d) -> MadeUpReports.withheld());

    assertThat(run(held.typing(yes(POINTS)))).isEqualTo(1);

    assertThat(held.out())
        .contains("\nNot today.\n* The boat is outside the model.\n")
        .doesNotContain("1 of ");
  }

  @Test
  void what_holds_back_at_the_limit_holds_the_boat_and_not_only_its_loading() {
    TestShell held =
        TestShell.whoseInspection(
            (b, r, d) -> MadeUpReports.with(Role.LIMITS_CREW, Outcome.BORDERLINE));

    assertThat(run(held.typing(yes(POINTS)))).isEqualTo(1);

    assertThat(held.out())
        .contains("\nNot today.\n* Freeboard at rest: borderline (one person of 95 kg).\n");
  }

  @Test
  void answers_may_come_from_a_file() throws IOException {
    Path answers = temp.resolve("answers.txt");
    Files.write(answers, List.of(yes(POINTS)));

    assertThat(run(shell, "--answers", answers.toString())).isZero();

    assertThat(shell.out()).contains(NOTHING_AGAINST);
  }

  @Test
  void a_file_of_answers_that_is_not_there_is_one_line_and_nothing_is_written() {
    assertThat(run(shell, "--answers", temp.resolve("none").toString())).isEqualTo(2);

    assertThat(shell.err())
        .isEqualTo(
            temp.resolve("none") + ": there is no such file. Check the name and the folder.\n");
    assertThat(temp.resolve("kept")).doesNotExist();
  }

  @Test
  void a_boat_file_that_cannot_be_used_is_one_line_and_nothing_is_written() {
    boat += "x";

    assertThat(run(shell)).isEqualTo(2);

    assertThat(shell.err()).hasLineCount(1).contains("my boat.jsonx");
    assertThat(temp.resolve("kept")).doesNotExist();
  }

  @Test
  void what_was_answered_is_kept_beside_the_record_and_never_written_over() throws IOException {
    run(shell.typing("no").typing(yes(POINTS - 1)));
    run(shell.typing(yes(POINTS)));

    Path shelf = Path.of(folder, "records", "soup-ladle");
    assertThat(Files.readString(shelf.resolve("today-2026-06-01T120000.txt")))
        .containsPattern("Answer:\\s+no\\.")
        .contains("Not today.");
    assertThat(Files.readString(shelf.resolve("today-2026-06-01T120000-2.txt")))
        .contains("Answer: yes.")
        .contains("Nothing found against it today");
  }

  @Test
  void no_line_is_wider_than_the_terminal_and_no_word_promises_anything() {
    run(shell.typing("no").typing(yes(3)));

    String said = shell.out().substring(0, shell.out().indexOf("\nRecord: "));
    assertThat(said.lines()).allMatch(line -> line.length() <= 80);
    assertThat(said.toLowerCase(Locale.ROOT))
        .doesNotContainPattern("\\b(safe|safely|approved|certified|pass|passed)\\b");
  }
}
