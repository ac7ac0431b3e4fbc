package thwartwise.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jline.reader.EndOfFileException;

/**
 * Lines from a pipe or a file, always UTF-8. Each is repeated behind its prompt, so that what comes
 * out reads like the conversation it was.
 */
record PipedLines(BufferedReader in, PrintWriter out) implements LineSource {

  static PipedLines standardInput(PrintWriter out) {
    return new PipedLines(
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)), out);
  }

  @Override
  public String readInput(String prompt) {
    out.print(prompt);
    out.flush();
    Optional<String> line = next();
    out.println(line.orElse(""));
    out.flush();
    return line.orElseThrow(EndOfFileException::new);
  }

  private Optional<String> next() {
    try {
      return Optional.ofNullable(in.readLine());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
