package thwartwise.shell;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/**
 * Standard output and error in UTF-8: a machine's locale must not turn "m³" into question marks.
 */
final class StandardStreams {
  private StandardStreams() {}

  /** Makes everything that is printed from here on UTF-8. */
  static void install() {
    System.setOut(utf8(FileDescriptor.out));
    System.setErr(utf8(FileDescriptor.err));
  }

  static PrintWriter out() {
    return new PrintWriter(System.out, false, StandardCharsets.UTF_8);
  }

  static PrintWriter err() {
    return new PrintWriter(System.err, false, StandardCharsets.UTF_8);
  }

  private static PrintStream utf8(FileDescriptor stream) {
    return new PrintStream(new FileOutputStream(stream), true, StandardCharsets.UTF_8);
  }
}
