package thwartwise.archive;

import java.nio.file.Path;
import thwartwise.json.InputFile;

/** Answers written down beforehand, one to a line. */
public final class AnswersFile {
  private AnswersFile() {}

  /**
   * The text of the file.
   *
   * @throws UnusableInput with one line when it cannot be read
   */
  public static String read(Path file) {
    return InputFile.text(file, "a file of answers", InputFile.BOAT_BYTES);
  }
}
