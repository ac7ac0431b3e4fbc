package thwartwise.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** The SHA-256 of a text in hexadecimal digits: the first eight of them, or all. */
final class Digest {
  private static final int DIGITS = 8;

  private Digest() {}

  static String of(String text) {
    return shortened(whole(text.getBytes(StandardCharsets.UTF_8)));
  }

  static String shortened(String hash) {
    return hash.substring(0, DIGITS);
  }

  static String whole(byte[] bytes) {
    return HexFormat.of().formatHex(sha256().digest(bytes));
  }

  /** The digest of a file of any length; empty when it is unreadable or no ordinary file. */
  static Optional<String> ofFile(Path file) {
    // A pipe or a device may never end.
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    MessageDigest sha = sha256();
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), sha)) {
      in.transferTo(OutputStream.nullOutputStream());
      return Optional.of(HexFormat.of().formatHex(sha.digest()));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }
}
