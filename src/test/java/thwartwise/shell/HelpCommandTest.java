package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.measured.BoatProperties.PropertyGroup;
import thwartwise.measured.Property;
import thwartwise.shell.HelpCommand.HelpPage;
import tools.jackson.databind.JsonNode;

class HelpCommandTest {
  private final TestShell shell = TestShell.open();

  @Test
  void the_commands_are_listed_in_the_order_a_newcomer_needs_them() {
    shell.run("help");

    assertThat(shell.out())
        .isEqualTo(
            """
            thwartwise works out from measurements how many people and how much weight a
            small open boat can carry before it tips, floods or sinks, and whether it holds
            them up when swamped.

              walk          measure a boat step by step, then inspect it
              sheet         print a measuring sheet to fill in with a pencil
              refit         tell what has changed on a boat, inspect it again, compare
              look          go through the systems of a boat by hand and eye
              inspect       inspect a boat file and keep the dated record
              seats         say who of some people may go, and who sits where
              suppose       try a change on a boat without keeping anything
              spread        say how sure the answer is, and what to measure again
              prove         say whether the boat floats as it was measured
              range         say how long the motor runs, and when to turn back
              wiring        work out wires and fuses, and draw the circuits
              today         ask what must be so before anybody goes out today
              page          print the whole page of a record, or one sheet of it
              show          draw a record's boat in letters: from above, the side and across
              records       list the records kept, or check that none was changed
              compare       tell what changed between two records, and what came of it
              fleet         show a group's boats in one table, and what is overdue
              demo          write an invented boat's file and inspect it
              help          list the commands, or explain one
              version       say which version this is
              quit          leave (also: exit, or Ctrl-D)

            Every command takes --folder DIR, where boats, drafts and records are kept;
            without it that is the folder "thwartwise" in your home.
            "help walk" explains the walk; so does "walk --help". To read: "help start",
            for the first evening; measuring, for the boat on its trestles; stations;
            people; waters; papers; rules; checklists; boat-file; boat-schema; electrics;
            exit-codes.

            A recommendation is no permission: it takes the boat, the water and the people
            as they were measured. Local rules and licensed practice come first.
            """);
  }

  @Test
  void pages_to_read_fit_the_terminal_and_name_commands_that_exist() {
    for (String page : HelpPage.NAMES) {
      TestShell reading = TestShell.open();
      assertThat(reading.run("help", page)).isZero();
      assertThat(reading.out().lines()).allMatch(line -> line.length() <= 80);
      assertThat(reading.out())
          .doesNotContainPattern("\\b(safe|approved|certified|pass|passes)\\b");
    }
    TestShell start = TestShell.open();
    start.run("help", "start");
    for (String command : List.of("demo", "walk", "refit", "today", "seats")) {
      assertThat(start.out()).contains("\n  " + command);
      assertThat(TestShell.open().run("help", command)).isZero();
    }
  }

  /** Rows of the printed table: every single value of a boat, its range, and no other. */
  @Test
  void the_keys_of_the_boat_file_are_those_of_the_table() {
    shell.run("help", "boat-file");
    List<String> rows =
        shell
            .out()
            .substring(shell.out().indexOf("At the top:"))
            .lines()
            .filter(line -> line.matches("  \\S.*"))
            .map(line -> line.strip().split("\\s+")[0])
            .toList();
    assertThat(rows)
        .isEqualTo(
            PropertyGroup.ALL.stream()
                .flatMap(group -> group.properties().stream().map(Property::key))
                .toList())
        .contains("mass", "bailer", "latitude", "fuseAt");
    String words = shell.out().replaceAll("\\s+", " ");
    for (PropertyGroup group : PropertyGroup.ALL) {
      group
          .properties()
          .forEach(
              each -> assertThat(words).contains(" " + each.key() + " " + each.type().described()));
    }
    assertThat(words).contains(" mass number, 1 to 2000 kg ", " trailer number, 10 to 3500 kg");
  }

  @Test
  void the_schema_of_the_boat_file_is_printed_alone() {
    assertThat(shell.run("help", "boat-schema")).isZero();
    JsonNode printed = JsonText.parse(shell.out(), Location.whole("schema.json"));
    assertThat(printed.path("title").stringValue()).isEqualTo("thwartwise/boat/1");
    JsonNode mass = printed.at("/properties/hull/properties/mass");
    assertThat(mass.path("minimum").doubleValue()).isEqualTo(1);
    assertThat(mass.path("maximum").doubleValue()).isEqualTo(2000);
    assertThat(mass.path("unit").stringValue()).isEqualTo("kg");
    assertThat(mass.path("description").stringValue()).startsWith("Weigh the bare hull");
  }

  @Test
  void a_page_tells_how_a_command_is_typed_and_what_its_options_are() {
    shell.run("help", "version");

    assertThat(shell.out())
        .isEqualTo(
            """
            version: say which version this is

            Usage: version [--folder DIR]

            Every record names the version that worked it out.

              --folder DIR  where boats, drafts and records are kept
            """);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "walk", "sheet", "look", "inspect", "page", "show", "refit", "seats", "suppose", "spread",
        "prove", "range", "wiring", "today", "records", "compare", "fleet", "demo", "help",
        "version", "quit"
      })
  void every_page_fits_the_terminal_and_names_the_folder(String command) {
    assertThat(shell.run("help", command)).isZero();

    assertThat(shell.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(shell.out()).startsWith(command + ": ").contains("--folder DIR");
  }

  @Test
  void the_flag_shows_the_same_page() {
    shell.run("inspect", "--help");
    String byFlag = shell.out();
    TestShell other = TestShell.open();
    other.run("help", "inspect");

    assertThat(byFlag).isEqualTo(other.out());
  }

  @Test
  void a_page_that_is_not_there_names_the_nearest() {
    assertThat(shell.run("help", "wlk")).isEqualTo(2);

    assertThat(shell.err())
        .isEqualTo(
            "Unknown command \"wlk\". Did you mean \"walk\"? \"help\" lists all commands.\n");
    assertThat(shell.out()).isEmpty();
  }

  @Test
  void no_word_promises_what_nobody_can() {
    for (String command : List.of("walk", "inspect", "seats", "demo", "help", "version", "quit")) {
      shell.run("help", command);
    }
    shell.run("help");

    assertThat(shell.out().toLowerCase(java.util.Locale.ROOT))
        .doesNotContainPattern("\\b(safe|approved|certified|pass|passes)\\b");
  }
}
