package thwartwise.shell;

import static java.nio.charset.StandardCharsets.UTF_8;
import static thwartwise.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Progress;
import thwartwise.advice.Progress.Stage;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.record.SampleBoats;
import thwartwise.rules.RuleBook;
import thwartwise.shell.Inspector.HeardAnswer;

class ProgressLineTest {
  private final ByteArrayOutputStream screen = new ByteArrayOutputStream();
  private long now = 7;
  private final ProgressLine line =
      new ProgressLine(
          "Setting the pages", Optional.of(new PrintStream(screen, true, UTF_8)), () -> now);

  @Test
  void nothing_shows_within_the_first_second() {
    now += 999_999_999;
    line.refresh();
    line.clear();

    assertThat(screen.toString(UTF_8)).isEmpty();
  }

  @Test
  void one_line_is_written_over_and_taken_away_at_the_end() {
    now += 1_000_000_000;
    line.refresh();
    line.at(Stage.GAINS, 3, 8);
    line.refresh();
    line.refresh();
    line.at(Stage.COSTS, 2, 4);
    line.at(Stage.CHANGES, 14, 23);
    line.refresh();
    line.clear();

    assertThat(screen.toString(UTF_8))
        .isEqualTo(
            "\rSetting the pages (Ctrl-C stops it)"
                + "\rWorking out what each change gains: 3 of 8 (Ctrl-C stops it)"
                + "\rTrying changes to the boat: 14 of 23 (Ctrl-C stops it)      "
                + "\r"
                + " ".repeat(54 + "^C".length())
                + "\r");
  }

  @Test
  void a_pipe_sees_nothing() {
    ProgressLine unseen = new ProgressLine("Setting the pages", Optional.empty(), () -> now);
    now += 2_000_000_000;
    unseen.refresh();
    unseen.clear();

    assertThat(ProgressLine.withText("under a test there is no terminal")).isNotNull();
    assertThat(screen.size()).isZero();
  }

  @Test
  void no_line_is_wider_than_a_terminal() {
    now += 1_000_000_000;
    for (Stage stage : Stage.values()) {
      line.at(stage, 100, 100);
      assertThat(shown()).hasSizeBetween(20, 77);
    }
    line.showAdults(12);
    line.at(Stage.SPREAD, 100, 100);
    assertThat(shown()).hasSizeBetween(20, 77);
  }

  @Test
  void a_crew_that_is_known_shows_until_all_of_the_answer_is_printed_or_another_is_tried() {
    now += 1_000_000_000;
    line.at(Stage.SPREAD, 60, 131);
    line.showAdults(2);
    assertThat(shown()).isEqualTo("Two adults; now the kilograms (Ctrl-C stops it)");
    line.at(Stage.SPREAD, 60, 135);
    assertThat(shown()).isEqualTo("Two adults; now the kilograms: 60 of 135 (Ctrl-C stops it)");
    line.at(Stage.CREW, 0, 1);
    line.at(Stage.SPREAD, 60, 131);
    assertThat(shown()).startsWith("Moving each measurement");
    line.showAdults(1);
    line.printBetween(() -> {});
    assertThat(shown()).isEqualTo("Working out the rest (Ctrl-C stops it)");
    line.at(Stage.SPREAD, 60, 131);
    assertThat(shown()).startsWith("Moving each measurement");
    line.showAdults(0);
    assertThat(shown()).startsWith("Moving each measurement");
  }

  @Test
  void an_inspection_shows_the_adults_in_its_line_and_no_other_command_does() {
    now += 1_000_000_000;
    Progress ofAnotherCommand = line;
    ofAnotherCommand.carries(2);
    assertThat(shown()).isEqualTo("Setting the pages (Ctrl-C stops it)");
    new HeardAnswer(line, unread -> {}).carries(2);
    assertThat(shown()).isEqualTo("Two adults; now the kilograms (Ctrl-C stops it)");
  }

  @Test
  void an_inspection_reports_its_progress_to_such_a_line() {
    List<Progress> heard = new ArrayList<>();
    Inspector inspector =
        new Inspector(
            (boat, rules, today, progress) -> {
              heard.add(progress);
              return MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS);
            },
            (inspection, number, corrects) -> List.of(),
            TestShell.NOON,
            new ProgramVersion("9.9"));
    inspector.inspect(
        SampleBoats.plain(), Optional.empty(), RuleBook.of(RuleSetFile.cautiousDefault()));
    assertThat(heard).hasSize(1).allMatch(HeardAnswer.class::isInstance);
  }

  private String shown() {
    line.clear();
    screen.reset();
    line.refresh();
    return screen.toString(UTF_8).strip();
  }

  @Test
  void what_is_printed_meanwhile_stands_where_the_line_stood() {
    now += 1_000_000_000;
    line.refresh();
    line.printBetween(() -> screen.writeBytes("It floats.\n".getBytes(UTF_8)));
    line.at(Stage.COSTS, 2, 4);
    line.refresh();

    String taken = "\r" + " ".repeat("Setting the pages (Ctrl-C stops it)^C".length()) + "\r";
    assertThat(screen.toString(UTF_8))
        .isEqualTo(
            "\rSetting the pages (Ctrl-C stops it)"
                + taken
                + "It floats.\n"
                + "\rWorking out what each change makes worse: 2 of 4 (Ctrl-C stops it)");
    line.printWaiting();
    assertThat(screen.toString(UTF_8)).containsOnlyOnce("It floats.");
  }
}
