package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.files.boat.BoatFile;

/** Ctrl-C pressed at a terminal while the packaged jar works. */
class StoppedWorkIT {
  /** Between the word that it works and the work itself lie some milliseconds. */
  private static final long UNDER_WAY_MILLIS = 500;

  private static final String[][] REFIT = {
    {"Which boat", "bath"},
    {"Units", "metric"},
    {"What has changed", "added"},
    {"Kit 1 (name", "second battery"},
    {", mass", "22"},
    {"forward of the aft end", "0.7"},
    {"port of the middle", "0"},
    {"height of its middle", "0.15"},
    {"is it fastened", "yes"},
    {"its own volume", ""},
    {"What else has changed", ""},
    {"Is the boat complete", ""}
  };

  @TempDir Path folder;
  private PackagedJar jar;
  private Path file;
  private String before;

  @BeforeEach
  void a_boat_measured_before() throws Exception {
    jar = new PackagedJar(folder).with("TERM", "xterm-256color");
    file = workspace().saveBoat(new WalkSheet().boat());
    before = Files.readString(file);
  }

  @Test
  void a_refit_stopped_while_it_works_changes_nothing_and_can_be_gone_on_with() throws Exception {
    try (Typist typist = Typist.at(jar, folder)) {
      typist.sees("thwartwise> ").types("refit");
      for (String[] turn : REFIT) {
        typist.sees(turn[0]).types(turn[1]);
      }
      typist.sees("Working it out.");
      Thread.sleep(UNDER_WAY_MILLIS);
      typist
          .presses(Typist.CTRL_C)
          .sees("Stopped. Nothing was written, and your answers are kept.");
      typist.sees("Type walk again to go on.").sees("thwartwise> ");
      assertThat(Files.readString(file)).isEqualTo(before);
      assertThat(workspace().folder().resolve("records")).doesNotExist();
      assertThat(Draft.in(workspace())).hasSize(1);

      // The draft is asked of the boat as it was: the battery is added once.
      typist.types("walk").sees("13 answers").sees("[Enter: 1]:").types("");
      typist.sees("Is the boat complete").types("");
      typist.sees("Record: ").sees("Next: ").sees("Look over").types("");
      typist.sees("thwartwise> ").types("quit");
      assertThat(typist.exitCode()).isZero();
    }
    List<Kit> was = BoatFile.parse(before, "boat").kit();
    Boat boat = BoatFile.read(file);
    assertThat(boat.kit()).hasSize(was.size() + 1);
    assertThat(workspace().drafts()).isEmpty();
    assertThat(workspace().records().of(boat.name()).faults()).isEmpty();
  }

  @Test
  void a_one_shot_stopped_while_it_works_leaves_cleanly_and_nothing_behind() throws Exception {
    try (Typist typist = Typist.at(jar, folder, "today", "--boat", file.toString())) {
      typist.sees("Working it out.");
      Thread.sleep(UNDER_WAY_MILLIS);
      typist.presses(Typist.CTRL_C).sees("Stopped. Nothing was written.");
      assertThat(typist.exitCode()).isEqualTo(2);
      assertThat(typist.screen()).doesNotContain("Exception").doesNotContain("Record: ");
    }
    assertThat(workspace().folder().resolve("records")).doesNotExist();
  }

  private Workspace workspace() {
    return new Workspace(folder.resolve("thwartwise"));
  }
}
