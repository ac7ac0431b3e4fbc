package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.archive.Workspace;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.inspection.Report;
import thwartwise.record.SampleBoats;

/** A boat is named as a person would, wherever one is wanted. */
class BoatChoiceTest {
  private static final Report GOOD = MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS);

  @TempDir Path folder;
  private final TestShell shell = TestShell.whoseInspection((b, r, d) -> GOOD);

  private int inspect(String... words) {
    String[] all = new String[words.length + 3];
    all[0] = "inspect";
    System.arraycopy(words, 0, all, 1, words.length);
    all[words.length + 1] = "--folder";
    all[words.length + 2] = folder.toString();
    return shell.run(all);
  }

  private Path keep() {
    return new Workspace(folder).saveBoat(SampleBoats.plain());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Soup Ladle", "soup  LADLE", "soup-ladle"})
  void a_boat_that_is_kept_is_found_by_its_name_and_as_its_file_is_called(String typed) {
    keep();

    assertThat(inspect("--boat", typed)).isZero();
    assertThat(shell.out()).startsWith("Soup Ladle: ").contains("refit");
    assertThat(shell.run("records", "--boat", typed, "--folder", folder.toString())).isZero();
    assertThat(shell.run("page", "1", "--boat", typed, "--folder", folder.toString())).isZero();
  }

  @Test
  void a_file_is_taken_where_a_boat_or_its_records_are_wanted() {
    String file = keep().toString();

    assertThat(inspect("--boat", file)).isZero();
    assertThat(shell.run("records", "--boat", file, "--folder", folder.toString())).isZero();
    assertThat(shell.run("page", "1", "--boat", file, "--folder", folder.toString())).isZero();
    assertThat(shell.err()).isEmpty();
  }

  @Test
  void without_one_the_only_boat_kept_is_meant() {
    keep();

    assertThat(inspect()).isZero();

    assertThat(shell.out()).startsWith("Soup Ladle: ");
  }

  @Test
  void without_one_the_boats_kept_are_listed() {
    keep();
    new Workspace(folder).saveBoat(SampleBoats.with("Soup Ladle", "Tea Spoon"));

    assertThat(inspect()).isEqualTo(2);

    assertThat(shell.err())
        .isEqualTo(
            "inspect: --boat BOAT is missing. Kept here: \"Soup Ladle\", \"Tea Spoon\". Name one of"
                + " them, or a boat file.\n");
  }

  @Test
  void where_none_is_kept_it_says_how_to_come_by_one() {
    assertThat(inspect()).isEqualTo(2);

    assertThat(shell.err())
        .isEqualTo(
            "inspect: --boat BOAT is missing, and no boat is kept here yet. \"walk\" measures"
                + " one.\n");
  }

  @Test
  void a_mistyped_name_and_a_mistyped_file_get_their_nearest() throws IOException {
    keep();
    Path file = Files.copy(keep(), folder.resolve("my boat.json"));

    assertThat(inspect("--boat", "Soup Ladel")).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(
            "Soup Ladel: there is no such file, and no boat of that name is kept here. Did you mean"
                + " \"Soup Ladle\"? Check the name and the folder.\n");

    assertThat(inspect("--boat", folder.resolve("my baot.json").toString())).isEqualTo(2);
    assertThat(shell.err()).contains("Did you mean \"" + "my boat.json" + "\" next to it?");
    assertThat(file).exists();
  }

  @Test
  void what_is_near_nothing_gets_no_proposal() {
    assertThat(inspect("--boat", "whatever")).isEqualTo(2);

    assertThat(shell.err())
        .isEqualTo(
            "whatever: there is no such file, and no boat of that name is kept here. Check the name"
                + " and the folder.\n");
  }

  @Test
  void the_walk_of_changes_of_a_named_boat_does_not_ask_which_it_is() {
    keep();

    shell.run("refit", "--boat", "soup-ladle", "--folder", folder.toString());

    assertThat(shell.out()).contains("Units (metric, feet)").doesNotContain("Which boat");
  }

  @Test
  void a_boat_that_is_not_kept_has_no_record_to_set_changes_beside() throws IOException {
    Path file = folder.resolve("other.json");
    Files.writeString(file, Files.readString(keep()).replace("Soup Ladle", "Egg Spoon"));

    assertThat(shell.run("refit", "--boat", file.toString(), "--folder", folder.toString()))
        .isEqualTo(2);

    assertThat(shell.err())
        .isEqualTo(
            file
                + ": \"Egg Spoon\" is not kept in this folder, so there is no record to set the"
                + " changes beside. Inspect it first: \"inspect --boat\" and the file.\n");
  }
}
