package thwartwise.archive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A lock on a draft, held by one terminal. The system releases it when the program ends, however it
 * ends, so a killed walk locks nobody out.
 */
public final class DraftLock implements AutoCloseable {
  /**
   * The files locked by this program. Some systems release the lock on a file when any opening of
   * it in the same program is closed, so a locked file is never opened a second time.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final FileChannel channel;

  private DraftLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** The lock, or empty when another terminal holds it. */
  static Optional<DraftLock> at(Path file) {
    try {
      Files.createDirectories(file.getParent());
      Path only = file.getParent().toRealPath().resolve(file.getFileName());
      return HELD.add(only) ? locked(only) : Optional.empty();
    } catch (IOException e) {
      throw WriteFault.of(file, e);
    }
  }

  private static Optional<DraftLock> locked(Path file) throws IOException {
    boolean locked = false;
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      locked = channel.tryLock() != null;
      if (locked) {
        return Optional.of(new DraftLock(file, channel));
      }
      channel.close();
      return Optional.empty();
    } finally {
      if (!locked) {
        HELD.remove(file);
      }
    }
  }

  @Override
  public void close() {
    try {
      Files.deleteIfExists(file);
      channel.close();
      // A walk that ended before its first answer leaves no folder; a folder with drafts in it
      // stays.
      Files.deleteIfExists(file.getParent());
    } catch (IOException leftLying) {
      // An empty lock file that nobody holds locks nobody out, and a folder with drafts in it
      // stays.
    } finally {
      HELD.remove(file);
    }
  }
}
