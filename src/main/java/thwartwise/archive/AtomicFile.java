package thwartwise.archive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/**
 * Writes a whole file or nothing: to a temporary file in the same folder, then to the disk, then by
 * renaming. After a power failure there is the old file or the new one, never half of one.
 */
final class AtomicFile {
  private static final String PARTS = ".*.part";

  /**
   * A file is written in less than this; an older temporary file was left when a program was
   * killed.
   */
  private static final Duration WRITING = Duration.ofMinutes(1);

  private AtomicFile() {}

  static void write(Path target, String content) {
    write(target, content.getBytes(StandardCharsets.UTF_8));
  }

  static void write(Path target, byte[] content) {
    try {
      createFolder(target.getParent());
      writeAndRename(target, content);
    } catch (IOException e) {
      throw WriteFault.of(target, e);
    }
  }

  static void createFolder(Path folder) throws IOException {
    // A link to a folder counts as a folder, but creating it again would fail.
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder);
    }
  }

  private static void writeAndRename(Path target, byte[] content) throws IOException {
    Path part =
        target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
    try {
      writeThrough(part, content);
      rename(part, target);
    } finally {
      Files.deleteIfExists(part);
    }
    settle(target.getParent());
  }

  static void writeThrough(Path part, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(content);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  static void rename(Path part, Path target) throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Writes the new name itself to the disk, on systems that can. */
  static void settle(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Some systems open no folders; the content is on the disk all the same.
      return;
    }
  }

  /** Removes temporary files that a killed program left in a folder. */
  static void clear(Path folder) throws IOException {
    for (Path part : Listing.of(folder, PARTS)) {
      Instant last = Files.getLastModifiedTime(part).toInstant();
      if (last.isBefore(Instant.now().minus(WRITING))) {
        Files.deleteIfExists(part);
      }
    }
  }
}
