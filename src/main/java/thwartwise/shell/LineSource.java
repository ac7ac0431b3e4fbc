package thwartwise.shell;

import java.util.List;
import org.springframework.shell.core.InputReader;

/** Where typed lines come from. */
interface LineSource extends InputReader {

  /**
   * The next line, as typed.
   *
   * @throws org.jline.reader.UserInterruptException on Ctrl-C
   * @throws org.jline.reader.EndOfFileException on Ctrl-D or when there are no more lines
   */
  @Override
  String readInput(String prompt);

  /** The same, where some lines are likely; a terminal completes them. */
  default String readInput(String prompt, List<String> likely) {
    return readInput(prompt);
  }
}
