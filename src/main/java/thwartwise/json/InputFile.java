package thwartwise.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The text of a file named by a user, or one line that says why there is none. */
public final class InputFile {
  /** A boat file has a few kilobytes; a file a thousand times larger is something else. */
  public static final int BOAT_BYTES = 1_000_000;

  /** A record holds the boat and two righting curves. */
  public static final int RECORD_BYTES = 10_000_000;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private InputFile() {}

  public static String text(Path file, String wanted, int mostBytes) {
    return text(bytes(file, wanted, mostBytes), wanted, Location.whole(file.toString()));
  }

  /** Every byte, for checking whether one was changed. */
  public static byte[] bytes(Path file, String wanted, int mostBytes) {
    Location spot = Location.whole(file.toString());
    checkKind(file, wanted, spot);
    return bytes(file, wanted, mostBytes, spot);
  }

  /** The text of bytes read from a file. */
  public static String text(byte[] bytes, String wanted, Location spot) {
    String text = decoded(bytes, wanted, spot);
    if (text.isBlank()) {
      throw spot.fault("the file is empty, wanted " + wanted + ". Check the name of the file.");
    }
    return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
  }

  private static void checkKind(Path file, String wanted, Location spot) {
    if (Files.isDirectory(file)) {
      throw spot.fault("this is a folder, wanted " + wanted + ". Name a file inside it.");
    }
    if (!Files.exists(file)) {
      throw spot.fault("there is no such file. Check the name and the folder.");
    }
    // A pipe or a device may never end.
    if (!Files.isRegularFile(file)) {
      throw spot.fault("this is not an ordinary file, wanted " + wanted + ". Copy it to one.");
    }
  }

  private static byte[] bytes(Path file, String wanted, int mostBytes, Location spot) {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(mostBytes + 1);
      if (bytes.length > mostBytes) {
        throw spot.fault(
            "the file is larger than %d kB, wanted %s. Check the name of the file.",
            mostBytes / 1000, wanted);
      }
      return bytes;
    } catch (IOException e) {
      throw spot.fault(e, "cannot be read: %s. Check the file.", IoErrorText.of(e));
    }
  }

  private static String decoded(byte[] bytes, String wanted, Location spot) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw spot.fault("this is not text in UTF-8, wanted " + wanted + ". Check the file.");
    }
  }
}
