package thwartwise.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Held by the one terminal that works on a draft. The system frees it when the program ends,
 * however it ends, so a killed walk locks nobody out.
 */
public final class DraftLock implements AutoCloseable {
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
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (isLocked(channel)) {
        return Optional.of(new DraftLock(file, channel));
      }
      channel.close();
      return Optional.empty();
    } catch (IOException e) {
      throw Spot.whole(file.toString())
          .fault(e, "cannot be written: %s. Free the folder or name another one.", Reason.of(e));
    }
  }

  private static boolean isLocked(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException heldByThisProgram) {
      return false;
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
    }
  }
}
