package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.boat.Boat;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.boat.BoatFile;
import thwartwise.record.SampleBoats;

class CompareCommandTest {
  private static final String PROVEN =
      "\"seal\": \"proven\", \"test\": { \"date\": \"2026-05-02\", \"how\": \"water poured in\","
          + " \"minutes\": 20, \"litresIn\": 0, \"by\": \"builder\" }";

  @TempDir Path temp;

  /** Nothing made up here: the boat is inspected twice. */
  @Test
  void a_second_battery_in_a_small_boat_costs_a_person() throws IOException {
    Boat boat = SampleBoats.with("\"seal\": \"claimed\"", PROVEN);
    inspect(TestShell.withoutAdvice(), boat);
    inspect(TestShell.withoutAdvice(), SampleBoats.withKit(boat, "second battery", 40));
    TestShell shell = TestShell.open();

    assertThat(shell.run("compare", "1", "2", "--folder", folder())).isZero();

    assertThat(shell.err()).isEmpty();
    assertThat(shell.out())
        .contains("* Kit added: second battery 40 kg.\n")
        .contains("One person fewer: no adult of 95 kg instead of one adult. The second battery\n")
        .contains("cost one person.\n")
        .contains("Same outcomes, other figures")
        .contains("* Freeboard at rest: ");
    assertThat(shell.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_record_is_found_by_number_handle_name_and_file() throws IOException {
    keepTwo();
    Path list = Path.of(folder(), "records", "soup-ladle", "chain.list");
    Path second = list.resolveSibling(Files.readAllLines(list).get(2).split(" ")[1]);
    String name = second.getFileName().toString().replace(".json", "");
    for (String typed : new String[] {"soup-ladle/2", name, name + ".json", second.toString()}) {
      TestShell shell = TestShell.open();
      assertThat(shell.run("compare", "1", typed, "--folder", folder())).as(typed).isZero();
      assertThat(shell.out()).contains("* Kit added: anchor 5 kg.");
    }
  }

  @Test
  void a_number_that_two_boats_have_asks_for_more() throws IOException {
    keepTwo();
    inspect(madeUp(), SampleBoats.with("Soup Ladle", "Egg Whisk"));
    TestShell shell = TestShell.open();
    assertThat(shell.run("compare", "1", "2", "--folder", folder())).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(
            Path.of(folder(), "records")
                + ": \"1\" may be egg-whisk/1 or soup-ladle/1. Write one of these.\n");
    TestShell named = TestShell.open();
    assertThat(named.run("compare", "1", "2", "--boat", "Soup Ladle", "--folder", folder()))
        .isZero();
  }

  @Test
  void two_records_are_needed_and_no_more() {
    TestShell shell = TestShell.open();
    assertThat(shell.run("compare", "1", "--folder", folder())).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo("compare: name two records, the older one first. \"records\" lists them.\n");
    TestShell three = TestShell.open();
    assertThat(three.run("compare", "1", "2", "3", "--folder", folder())).isEqualTo(2);
    assertThat(three.err()).startsWith("compare: \"3\" is one word too many.");
  }

  @Test
  void a_file_that_is_no_record_is_refused_in_one_line() throws IOException {
    Path file = Files.writeString(temp.resolve("soup.json"), SampleBoats.json());
    TestShell shell = TestShell.open();
    assertThat(shell.run("compare", file.toString(), "1", "--folder", folder())).isEqualTo(2);
    assertThat(shell.err())
        .isEqualTo(file + ": this is a boat file, wanted a record file. Name another file.\n");
  }

  @Test
  void a_page_for_a_browser_is_kept_where_it_is_wanted_and_takes_the_place_of_ours_only()
      throws IOException {
    keepTwo();
    Path page = temp.resolve("new/refit.html");
    for (int turn = 0; turn < 2; turn++) {
      TestShell shell = TestShell.open();
      assertThat(shell.run("compare", "1", "2", "--html", page.toString(), "--folder", folder()))
          .isZero();
      assertThat(shell.out()).isEqualTo("The page is in " + page + ". Open it in a browser.\n");
      assertThat(Files.readString(page)).contains("<li>Kit added: anchor 5\u00a0kg.</li>");
    }
    Path other = Files.writeString(temp.resolve("mine.html"), "<p>mine</p>");
    TestShell refused = TestShell.open();
    assertThat(refused.run("compare", "1", "2", "--html", other.toString(), "--folder", folder()))
        .isEqualTo(2);
    assertThat(refused.err())
        .isEqualTo(
            other + ": is there already and is no page of this program. Name another file.\n");
    assertThat(Files.readString(other)).isEqualTo("<p>mine</p>");
  }

  private void keepTwo() throws IOException {
    inspect(madeUp(), SampleBoats.plain());
    inspect(madeUp(), SampleBoats.withKit(SampleBoats.plain(), "anchor", 5));
  }

  private static TestShell madeUp() {
    return TestShell.whoseInspection(
        (b, r, d) -> MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS));
  }

  private void inspect(TestShell shell, Boat boat) throws IOException {
    Path file = Files.writeString(temp.resolve("boat.json"), BoatFile.write(boat));
    assertThat(shell.run("inspect", "--boat", file.toString(), "--folder", folder())).isLessThan(2);
  }

  private String folder() {
    return temp.resolve("kept").toString();
  }
}
