package thwartwise.shell;

import java.nio.file.Path;

/** What a record is called, and where its pages lie: beside it, under its name. */
final class PaperPath {
  private static final String ENDING = ".json";

  private PaperPath() {}

  /** The number of the record that is kept in that file. */
  static String number(Path record) {
    String file = record.getFileName().toString();
    return file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
  }

  static Path paper(Path record, String ending) {
    return record.resolveSibling(number(record) + ending);
  }
}
