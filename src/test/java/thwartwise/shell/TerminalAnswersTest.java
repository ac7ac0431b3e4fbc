package thwartwise.shell;

import static java.nio.charset.StandardCharsets.UTF_8;
import static thwartwise.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.DumbTerminal;
import org.junit.jupiter.api.Test;
import thwartwise.shell.LineSource.TerminalAnswers;

/** Keys as a terminal sends them. */
class TerminalAnswersTest {

  private static String line(String keys, String... likely) throws IOException {
    ByteArrayInputStream in = new ByteArrayInputStream((keys + "\r").getBytes(UTF_8));
    try (Terminal terminal =
        new DumbTerminal("test", "ansi", in, new ByteArrayOutputStream(), UTF_8)) {
      return new TerminalAnswers(terminal).readInput("|", List.of(likely));
    }
  }

  /** Tabs asked for words to complete and were lost: "Keel0.060.02000.03". */
  @Test
  void a_row_of_a_spreadsheet_keeps_its_tabs() throws IOException {
    assertThat(line("Keel\t0.06\t0.02\t0")).isEqualTo("Keel\t0.06\t0.02\t0");
    assertThat(line("Keel\t0.06\t0", "back", "list")).isEqualTo("Keel\t0.06\t0");
  }

  @Test
  void a_word_that_was_begun_is_completed() throws IOException {
    assertThat(line("ply\t", "plywood", "GRP").strip()).isEqualTo("plywood");
  }
}
