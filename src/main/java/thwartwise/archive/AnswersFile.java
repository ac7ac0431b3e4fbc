package thwartwise.archive;

import java.nio.file.Path;
import thwartwise.json.InputFile;

/** Answers noted down beforehand, one a line. */
public final class AnswersFile {
  private AnswersFile() {}

  /**
   * The text of it.
   *
   * @throws UnusableInput with one line when it cannot be read
   */
  public static String read(Path file) {
    return InputFile.text(file, "a file of answers", InputFile.BOAT_BYTES);
  }
}
