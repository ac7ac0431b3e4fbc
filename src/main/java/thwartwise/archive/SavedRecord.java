package thwartwise.archive;

import java.nio.file.Path;
import java.util.List;

/**
 * A record that is kept.
 *
 * @param file the JSON file
 * @param warnings one line for each list or draft that could not be brought up to date with it
 */
public record SavedRecord(Path file, List<String> warnings) {
  public SavedRecord {
    warnings = List.copyOf(warnings);
  }
}
