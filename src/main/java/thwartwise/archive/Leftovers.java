package thwartwise.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.json.UnusableInput;

/** What a program left in a folder of ours when it was killed in the middle of writing. */
record Leftovers(Path folder) {

  /** A folder that nothing may be written to can still be read. */
  void clear() {
    try {
      if (FileTransaction.isUnfinished(records())) {
        StoreLock.holding(records(), () -> FileTransaction.in(folder.toAbsolutePath(), records()));
      }
      for (Path within : written().toList()) {
        AtomicFile.clear(within);
      }
    } catch (IOException | UnusableInput stays) {
      return;
    }
  }

  private Path records() {
    return folder.resolve("records");
  }

  private Stream<Path> written() {
    List<Path> boats = Listing.of(records(), "[!.]*").stream().filter(Files::isDirectory).toList();
    return Stream.concat(
        Stream.of(folder.resolve("boats"), folder.resolve("drafts")), boats.stream());
  }
}
