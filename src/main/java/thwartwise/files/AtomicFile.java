package thwartwise.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes a file whole or not at all: to a temporary file in the same folder, onto the disk, then
 * renamed. A closed lid or an empty battery leaves the old file or the new one, never half of one.
 */
final class AtomicFile {
  private AtomicFile() {}

  static void write(Path target, String content) {
    write(target, content.getBytes(StandardCharsets.UTF_8));
  }

  static void write(Path target, byte[] content) {
    try {
      createFolder(target.getParent());
      writeAndRename(target, content);
    } catch (IOException e) {
      throw Spot.whole(target.toString())
          .fault(e, "cannot be written: %s. Free the folder or name another one.", Reason.of(e));
    }
  }

  private static void createFolder(Path folder) throws IOException {
    // A link to a folder is a folder too, which creating it anew would refuse.
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

  private static void writeThrough(Path part, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(content);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  private static void rename(Path part, Path target) throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Puts the new name itself onto the disk, on systems that can. */
  private static void settle(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Some systems open no folders; the content is on the disk all the same.
      return;
    }
  }
}
