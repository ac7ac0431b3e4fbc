package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.record.SampleBoats;
import thwartwise.record.SampleRecords;

class ShowCommandTest {
  @TempDir Path folder;
  private final TestShell shell = TestShell.open();

  @Test
  void the_boat_is_drawn_on_eighty_columns_with_its_places_people_and_kit() {
    new Workspace(folder)
        .saveRecord(SampleRecords.of(SampleBoats.plain(), SampleRecords.report()), "its page");

    assertThat(shell.run("show", "--folder", folder.toString())).isZero();

    List<String> lines = shell.out().lines().toList();
    assertThat(lines).allMatch(line -> line.length() <= 80);
    assertThat(shell.out())
        .contains("From above: places, people, kit and chambers")
        .contains("From the side: how deep it floats")
        .contains("1 m");
    SampleBoats.plain()
        .places()
        .forEach(place -> assertThat(shell.out()).contains("   " + place.name()));
    assertThat(lines.stream().filter(line -> line.contains("____"))).hasSizeGreaterThan(5);
  }

  @Test
  void where_nothing_is_kept_it_says_what_to_do() {
    assertThat(shell.run("show", "--folder", folder.toString())).isEqualTo(2);
    assertThat(shell.err())
        .contains("no record is kept here. Inspect a boat first, or name a --folder.");
  }
}
