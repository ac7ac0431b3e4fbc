package thwartwise.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import thwartwise.json.IoErrorText;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;

/** One line about a file that the system would not write. */
final class WriteFault {
  /**
   * With less room than this, a block or two, nothing more can be written, whatever the system
   * reports.
   */
  private static final long NO_ROOM_BYTES = 16_384;

  private WriteFault() {}

  static UnusableInput of(Path file, IOException e) {
    return Location.whole(file.toString()).fault(e, "cannot be written: %s", reason(file, e));
  }

  /** The reason, and what to do. */
  static String reason(Path file, IOException e) {
    return isFull(file, e)
        ? "no room left on the disk. Make room there, or name a folder on another disk."
        : IoErrorText.of(e) + ". Free the folder or name another one.";
  }

  /**
   * Whether the disk is full. The system's own message is in the language of the machine, so the
   * free room is looked at too.
   */
  private static boolean isFull(Path file, IOException e) {
    String said = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
    return said.contains("no space left")
        || said.contains("not enough space")
        || said.contains("quota exceeded")
        || room(file.toAbsolutePath().getParent()) < NO_ROOM_BYTES;
  }

  private static long room(Path folder) {
    try {
      return folder == null || !Files.isDirectory(folder)
          ? Long.MAX_VALUE
          : Files.getFileStore(folder).getUsableSpace();
    } catch (IOException unknown) {
      return Long.MAX_VALUE;
    }
  }
}
