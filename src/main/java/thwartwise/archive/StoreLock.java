package thwartwise.archive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Lets one program at a time save a record: two at once would take the same place in the chain. On
 * a system without locks the record is saved without one, because losing it would be worse.
 */
final class StoreLock {
  private static final String NAME = ".lock";

  private StoreLock() {}

  static synchronized <T> T holding(Path folder, Supplier<T> deed) {
    try (FileChannel channel = open(folder)) {
      return under(channel, deed);
    } catch (IOException e) {
      throw WriteFault.of(folder.resolve(NAME), e);
    }
  }

  private static FileChannel open(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder);
    }
    return FileChannel.open(
        folder.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
  }

  private static <T> T under(FileChannel channel, Supplier<T> deed) throws IOException {
    Optional<FileLock> lock = lock(channel);
    try {
      return deed.get();
    } finally {
      if (lock.isPresent()) {
        lock.get().release();
      }
    }
  }

  private static Optional<FileLock> lock(FileChannel channel) {
    try {
      return Optional.of(channel.lock());
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
