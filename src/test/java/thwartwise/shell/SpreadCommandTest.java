package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.inspection.PlainHulls;
import thwartwise.report.InputWords;
import thwartwise.spread.InputKind;

class SpreadCommandTest {
  @TempDir Path temp;
  private final TestShell shell = TestShell.open();

  @Test
  void the_answer_is_told_with_what_to_measure_again_and_nothing_is_kept() throws IOException {
    Workspace workspace = new Workspace(temp);
    workspace.saveBoat(PlainHulls.pram());
    Path file = workspace.boatPath("pram");
    // Its chambers were tested shortly before the day of the test.
    String before = Files.readString(file).replace("2026-09-25", "2026-05-02");
    Files.writeString(file, before);

    int code = shell.run("spread", "--boat", "pram", "--folder", temp.toString());

    assertThat(shell.err()).isEmpty();
    assertThat(code).isZero();
    assertThat(shell.out())
        .startsWith(
            """
            pram: how sure the answer is
            ============================
            One adult of 95 kg recommended; in fewer than 1 of 100 boats measured like this
            it would be fewer.
            """)
        .contains("* Worth ten minutes: measure the height of the rail over the bottom again");
    assertThat(shell.out().lines()).hasSizeLessThanOrEqualTo(24);
    assertThat(Files.readString(file)).isEqualTo(before);
    assertThat(temp.resolve("records")).doesNotExist();
  }

  @Test
  void a_boat_that_is_not_there_is_named() {
    int code = shell.run("spread", "--boat", temp.resolve("none.json").toString());

    assertThat(code).isEqualTo(2);
    assertThat(shell.err()).contains("none.json");
    assertThat(shell.out()).isEmpty();
  }

  @Test
  void what_was_measured_with_care_is_one_of_the_kinds_that_are_listed() throws IOException {
    Workspace workspace = new Workspace(temp);
    workspace.saveBoat(PlainHulls.pram());

    int code =
        shell.run(
            "spread",
            "--boat",
            "pram",
            "--better",
            "edge heights, the paint",
            "--folder",
            temp.toString());

    assertThat(code).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(
            "spread: \"the paint\" is not one of these. Type one of: edge heights, hull weight, kit"
                + " weights, people's weights, hull balance, hull inclined, half-breadths, bottom"
                + " heights, shell thickness, soaked density, chamber litres, seat heights.\n");
  }

  @Test
  void the_help_names_every_kind_that_can_be_measured_with_care() {
    shell.run("help", "spread");

    for (InputKind kind : InputKind.values()) {
      if (kind.hasBetterWay()) {
        assertThat(shell.out()).contains(InputWords.name(kind));
      }
    }
  }
}
