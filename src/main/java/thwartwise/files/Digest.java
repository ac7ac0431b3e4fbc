package thwartwise.files;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The SHA-256 of a text, in hexadecimal digits: the first eight of them, or all. */
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
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256", e);
    }
  }
}
