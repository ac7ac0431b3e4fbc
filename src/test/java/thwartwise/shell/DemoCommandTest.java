package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Space;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.report.ReportJson;
import thwartwise.inspection.Report;

class DemoCommandTest {
  private static final Report SHORT = MadeUpReports.with(Role.LIMITS_CREW, Outcome.FALLS_SHORT);

  @TempDir Path folder;
  private final TestShell shell = TestShell.whoseInspection((b, r, d) -> SHORT);

  @Test
  void it_exits_with_nought_whatever_the_boat_is_like() {
    assertThat(shell.run("demo", "--folder", folder.toString())).isZero();
    assertThat(shell.err()).isEmpty();
  }

  @Test
  void the_boat_file_it_writes_is_the_boat_it_inspected() {
    shell.run("demo", "--folder", folder.toString());

    Path file = new Workspace(folder).boatPath(DemoCommand.asOf(TestShell.TODAY).name());
    assertThat(BoatFile.read(file)).isEqualTo(DemoCommand.asOf(TestShell.TODAY));
    assertThat(shell.out()).startsWith(DemoCommand.asOf(TestShell.TODAY).name() + ": ");
  }

  @Test
  void json_stands_alone_on_the_output() {
    shell.run("demo", "--json", "--folder", folder.toString());

    assertThat(ReportJson.parse(shell.out(), "output").boat()).isEqualTo(SHORT.boat());
  }

  @Test
  void nothing_is_written_when_the_inspection_fails() {
    TestShell failing =
        TestShell.whoseInspection(
            (b, r, d) -> {
              throw new IllegalStateException();
            });

    assertThat(failing.run("demo", "--folder", folder.toString())).isEqualTo(2);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void its_leak_tests_never_grow_stale() {
    for (LocalDate day : List.of(LocalDate.of(2026, 11, 25), LocalDate.of(2041, 2, 28))) {
      BoatModel model = BoatModel.of(DemoCommand.asOf(day), day);
      assertThat(model.spaces())
          .filteredOn(s -> s.counting().share() > 0)
          .extracting(Space::name)
          .containsExactly("bow locker", "stern bench box, port", "stern bench box, starboard");
    }
  }
}
