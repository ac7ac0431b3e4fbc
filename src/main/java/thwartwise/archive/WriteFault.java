package thwartwise.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import thwartwise.json.IoErrorText;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;

/** One line on a file that the system would not write. */
final class WriteFault {
  /** Less than a block or two: nothing more can be written, whatever the system says of it. */
  private static final long NO_ROOM_BYTES = 16_384;

  private WriteFault() {}

  static UnusableInput of(Path file, IOException e) {
    return Location.whole(file.toString()).fault(e, "cannot be written: %s", reason(file, e));
  }

  /** Why not, and what to do. */
  static String reason(Path file, IOException e) {
    return isFull(file, e)
        ? "no room left on the disk. Make room there, or name a folder on another disk."
        : IoErrorText.of(e) + ". Free the folder or name another one.";
  }

  /** The system's own words come in the language of the machine, so the room is looked at too. */
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
