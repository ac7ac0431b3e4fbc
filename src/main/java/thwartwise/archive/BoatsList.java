package thwartwise.archive;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import thwartwise.json.InputFile;

/**
 * The list of all boat folders that ever held a record, {@code boats.list}, next to them. Without
 * it a missing folder could not be detected. Lines are only ever added.
 */
record BoatsList(Path path) {
  static final String NAME = "boats.list";
  private static final String HEADER =
      "thwartwise/boats/1: folder of each boat of which a record was kept";
  private static final Pattern FOLDER = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  boolean exists() {
    return Files.exists(path);
  }

  /** The folders in the list. A damaged line names no folder; no line is ever overwritten. */
  List<String> folders() {
    return exists()
        ? new String(bytes(), StandardCharsets.UTF_8)
            .lines()
            .skip(1)
            .filter(line -> FOLDER.matcher(line).matches())
            .distinct()
            .toList()
        : List.of();
  }

  /** The list with these folders added; empty when it names them all. */
  Optional<byte[]> naming(Collection<String> folders) {
    TreeSet<String> missing = new TreeSet<>(folders);
    missing.removeAll(folders());
    missing.removeIf(folder -> !FOLDER.matcher(folder).matches());
    if (missing.isEmpty()) {
      return Optional.empty();
    }
    byte[] text = exists() ? bytes() : (HEADER + "\n").getBytes(StandardCharsets.UTF_8);
    for (String folder : missing) {
      text = ChainText.withLine(text, folder);
    }
    return Optional.of(text);
  }

  private byte[] bytes() {
    return InputFile.bytes(path, "a list of boats", InputFile.RECORD_BYTES);
  }
}
