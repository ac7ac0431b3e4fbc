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
 * Held by the one terminal that works on a draft. The system frees it when the program ends,
 * however it ends, so a killed walk locks nobody out.
 */
public final class DraftLock implements AutoCloseable {
  /**
   * What this program holds. A system may drop the lock on a file as soon as the program that holds
   * it closes any opening of that file, so a held file is never opened a second time.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final FileChannel channel;

  private DraftLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** Empty when another terminal holds it. */
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
      // A walk left before its first answer leaves no folder behind; one with drafts in it stays.
      Files.deleteIfExists(file.getParent());
    } catch (IOException leftLying) {
      // An empty file that nobody holds locks nobody out, and a folder with drafts in it stays.
    } finally {
      HELD.remove(file);
    }
  }
}
