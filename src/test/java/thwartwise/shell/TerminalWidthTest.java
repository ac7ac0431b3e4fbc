package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.archive.Workspace;
import thwartwise.files.boat.BoatFile;
import thwartwise.sampleboats.ElectricBoat;
import thwartwise.walk.Sheet;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/**
 * No line is longer than a terminal of 80 columns, so none is broken within a word there, nor in
 * one of 100: nothing that is said depends on the width.
 */
class TerminalWidthTest {
  private static final int COLUMNS = 80;

  /** Room for a short answer behind a prompt. */
  private static final int PROMPT = 78;

  /** No question takes it: too long for a name and nothing else. */
  private static final String REFUSED = "fourteen_stone_and_a_bit".repeat(9);

  @TempDir Path folder;

  static Stream<Arguments> sheets() {
    return Stream.of(
        Arguments.of("own, in metres", Sheet.small()),
        Arguments.of("own, in feet", Sheet.full(false)),
        Arguments.of("borrowed and tried", Sheet.borrowedAndTried()));
  }

  private static void fit(List<String> lines) {
    assertThat(lines).isNotEmpty();
    assertThat(lines.stream().filter(line -> line.length() > COLUMNS)).isEmpty();
  }

  /** Every question, why it is asked, its sketch, a refusal, its echo, and the list of all. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("sheets")
  void nothing_that_a_walk_says_is_wider_than_the_terminal(String name, Sheet sheet) {
    List<Answer> all = sheet.stops().get(sheet.stops().size() - 1);
    List<String> typed = new ArrayList<>();
    for (Answer answer : all) {
      typed.addAll(List.of("why", "show", REFUSED, answer.typed()));
    }
    typed.addAll(typed.size() - 1, List.of("list", "change 2000"));
    TypedConversation conversation = new TypedConversation(typed);
    Draft draft = Draft.startedAt(LocalDateTime.of(2026, 5, 9, 12, 0), new Workspace(folder));
    try (InterimLine nothing = new InterimLine(known -> Optional.empty())) {
      new WalkConversation(conversation, Sheet.WALK, draft, nothing).boat();
    }
    assertThat(conversation.isAllTyped()).isTrue();
    assertThat(conversation.said()).hasSizeGreaterThan(5 * all.size());
    fit(conversation.said());
    assertThat(conversation.prompts()).hasSize(typed.size());
    assertThat(conversation.prompts().stream().filter(p -> p.length() > PROMPT)).isEmpty();
  }

  /** Twelve stations with six lines: what is shown before the table is taken. */
  @Test
  void a_wide_table_of_offsets_is_shown_within_it() {
    for (boolean metric : List.of(true, false)) {
      String table = plan(12, 6, metric);
      List<Answer> before = before(metric);
      Reply reply = Sheet.WALK.table(before, table);
      assertThat(reply).as("%s", reply).isInstanceOf(Reply.Proposed.class);
      List<String> shown = ((Reply.Proposed) reply).shown();
      assertThat(shown.get(0)).startsWith("Read in ");
      fit(shown.stream().skip(1).flatMap(String::lines).toList());
    }
  }

  private static List<Answer> before(boolean metric) {
    Sheet sheet = metric ? Sheet.small() : Sheet.full(false);
    return sheet.stops().stream()
        .filter(answers -> Sheet.WALK.takesTable(answers))
        .findFirst()
        .orElseThrow();
  }

  /** A box, its sides in as many steps as there are lines. */
  private static String plan(int stations, int lines, boolean metric) {
    StringBuilder table = new StringBuilder();
    double length = metric ? 2.4 : 144;
    for (int i = 0; i < stations; i++) {
      table.append("station number ").append(i + 1);
      table
          .append(",")
          .append(Math.round(1000 * length * i / (stations - 1)) / 1000.0)
          .append(",0");
      for (int j = 1; j < lines; j++) {
        double y = (metric ? 0.4 : 16) + j * (metric ? 0.02 : 1);
        double z = (j - 1) * (metric ? 0.1 : 4);
        table
            .append(",")
            .append(Math.round(100 * y) / 100.0)
            .append(",")
            .append(Math.round(1000 * z) / 1000.0);
      }
      table.append("\n");
    }
    return table.toString();
  }

  /** Every point of a boat with all there is to look at, with how and why. */
  @Test
  void every_point_to_be_looked_at_fits() {
    Workspace workspace = new Workspace(folder);
    workspace.saveBoat(BoatFile.parse(ElectricBoat.JSON, "electric"));
    List<String> typed = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      typed.addAll(List.of("why", "list", REFUSED, "no, " + "seen from afar ".repeat(4)));
    }
    TestShell shell = TestShell.open().typing(typed.toArray(String[]::new));
    shell.run("look", "--boat", "Butter Dish", "--by", "Iris", "--folder", folder.toString());
    List<String> asked = shell.out().lines().filter(l -> l.contains("(why, back, list")).toList();
    assertThat(asked).hasSizeGreaterThan(60);
    fit(
        shell
            .out()
            .lines()
            .filter(line -> !line.contains("(why, back, list, leave):"))
            .filter(line -> !line.contains(folder.toString()))
            .toList());
    assertThat(asked).allMatch(line -> line.indexOf("leave):") < PROMPT);
  }
}
