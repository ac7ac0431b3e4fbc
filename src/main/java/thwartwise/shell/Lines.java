package thwartwise.shell;

import org.springframework.shell.core.InputReader;

/** Where typed lines come from. */
interface Lines extends InputReader {

  /**
   * The next line, as typed.
   *
   * @throws org.jline.reader.UserInterruptException on Ctrl-C
   * @throws org.jline.reader.EndOfFileException on Ctrl-D or when there are no more lines
   */
  @Override
  String readInput(String prompt);
}
