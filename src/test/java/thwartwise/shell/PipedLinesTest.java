package thwartwise.shell;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import org.jline.reader.EndOfFileException;
import org.junit.jupiter.api.Test;
import thwartwise.shell.LineSource.PipedLines;

class PipedLinesTest {
  private final StringWriter out = new StringWriter();

  @Test
  void each_line_is_repeated_behind_its_prompt() {
    PipedLines lines = from("Bath Mat\r\n\nlast");

    assertThat(lines.readInput("Name: ")).isEqualTo("Bath Mat");
    assertThat(lines.readInput("Who: ")).isEmpty();
    assertThat(lines.readInput("Units: ")).isEqualTo("last");

    assertThat(out.toString().lines()).containsExactly("Name: Bath Mat", "Who: ", "Units: last");
  }

  @Test
  void the_end_is_told_apart_from_an_empty_line() {
    PipedLines lines = from("");

    assertThatThrownBy(() -> lines.readInput("Name: ")).isInstanceOf(EndOfFileException.class);
  }

  private PipedLines from(String text) {
    return new PipedLines(new BufferedReader(new StringReader(text)), new PrintWriter(out));
  }
}
