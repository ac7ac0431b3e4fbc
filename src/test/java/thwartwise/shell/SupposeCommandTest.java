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
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.record.SampleBoats;

class SupposeCommandTest {
  @TempDir Path temp;
  private final TestShell shell = TestShell.open();
  private Path boat;

  @BeforeEach
  void keep_a_boat() {
    Workspace workspace = new Workspace(temp);
    workspace.saveBoat(SampleBoats.plain());
    boat = workspace.boatPath("Soup Ladle");
  }

  @Test
  void the_difference_is_told_in_a_few_lines_and_nothing_is_kept() throws IOException {
    String before = Files.readString(boat);

    int code =
        shell.run(
            "suppose",
            "battery",
            "at",
            "1.2",
            "m,",
            "without",
            "the",
            "motor",
            "--folder",
            temp.toString());

    assertThat(shell.err()).isEmpty();
    assertThat(code).isEqualTo(1);
    assertThat(shell.out())
        .startsWith(
            """
            Soup Ladle, supposed
            ====================
            * Move the battery to 1.20 m forward of the aft end, 0.12 m up.
            * Leave the motor ashore.
            * Aboard as the boat file has it.

            """)
        .contains(
            "Dry, it stays up with ", "Full of water, it holds up ", "What stops the next person: ")
        .endsWith(
            """
            Only tried: nothing was saved. If you make this change, type refit to record it.
            A recommendation, not a capacity plate and not a builder's plate.
            """);
    assertThat(shell.out().lines()).hasSizeLessThanOrEqualTo(20);
    assertThat(shell.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(Files.readString(boat)).isEqualTo(before);
    assertThat(files()).containsExactly(boat);
  }

  @Test
  void the_words_may_stand_in_quotes_beside_a_boat_file() throws IOException {
    Path other = Files.copy(boat, temp.resolve("other.json"));

    shell.run("suppose", "a girl of 10 and an adult", "--boat", other.toString());

    assertThat(shell.err()).isEmpty();
    assertThat(shell.out())
        .contains("* Not all of these people may go: ", "Ashore: adult.")
        .contains("Type seats with --people for these");
  }

  @Test
  void what_is_not_understood_is_told_in_one_line() {
    assertThat(shell.run("suppose", "without sails", "--boat", boat.toString())).isEqualTo(2);

    assertThat(shell.out()).isEmpty();
    assertThat(shell.err())
        .isEqualTo("suppose: This boat has no kit \"sails\". Type one of: battery, motor.\n");
  }

  @Test
  void without_a_boat_or_with_several_one_must_be_named() throws IOException {
    Path empty = Files.createDirectory(temp.resolve("empty"));
    shell.run("suppose", "without sails", "--folder", empty.toString());
    new Workspace(temp).saveBoat(SampleBoats.with("Soup Ladle", "Tea Spoon"));
    shell.run("suppose", "without sails", "--folder", temp.toString());

    assertThat(shell.err())
        .isEqualTo(
            "suppose: --boat BOAT is missing, and no boat is kept here yet. \"walk\" measures"
                + " one.\n"
                + "suppose: --boat BOAT is missing. Kept here: \"Soup Ladle\", \"Tea Spoon\"."
                + " Name one"
                + " of them, or a boat file.\n");
  }

  /** Not by the search alone, which allows seatings that a record refuses. */
  @Test
  void people_and_the_boat_before_and_after_are_judged_as_in_a_record() {
    List<Boat> judged = new ArrayList<>();

    TestShell.hearing(judged::add).run("suppose", "a girl of 10", "--boat", boat.toString());

    Boat asItIs = BoatFile.read(boat);
    assertThat(judged).hasSize(2).startsWith(asItIs);
    assertThat(judged.get(1).aboard()).singleElement().matches(p -> p.name().equals("girl of 10"));
  }

  @Test
  void the_boat_as_it_is_is_not_worked_out_again_after_it_was_inspected_or_a_change_tried() {
    List<Boat> judged = new ArrayList<>();
    TestShell heard = TestShell.hearing(judged::add);
    String folder = temp.toString();

    heard.run("inspect", "--boat", boat.toString(), "--folder", folder);
    heard.run("suppose", "without the motor", "--folder", folder);
    heard.run("suppose", "without the battery", "--folder", folder);
    assertThat(judged).hasSize(2).doesNotContain(BoatFile.read(boat));

    new Workspace(temp).saveBoat(BoatFile.read(boat).withHullMass(64));
    heard.run("suppose", "without the battery", "--folder", folder);
    assertThat(judged).hasSize(4).endsWith(BoatFile.read(boat));
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(temp)) {
      return all.filter(Files::isRegularFile).toList();
    }
  }
}
