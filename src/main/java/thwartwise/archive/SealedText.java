package thwartwise.archive;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a record with its own hash, which stands on a line by itself after the format. The
 * hash is the SHA-256 of every byte of the file except that line, so anybody can check it: remove
 * the line and hash the rest.
 *
 * @param hash computed from the bytes as they are
 * @param stated the hash in the text; empty where it has no such line
 */
record SealedText(String hash, Optional<String> stated) {
  private static final Pattern HASH_LINE =
      Pattern.compile(
          "\\{\\n {2}\"format\": \"thwartwise/record/[0-9]+\",\\n( {2}\"hash\": \"([0-9a-f]{64})\",\\n)");

  static SealedText of(byte[] bytes) {
    // One letter for each byte, so that no byte is lost.
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    Matcher line = HASH_LINE.matcher(text);
    if (!line.lookingAt()) {
      return new SealedText(Digest.whole(bytes), Optional.empty());
    }
    String rest = text.substring(0, line.start(1)) + text.substring(line.end(1));
    return new SealedText(
        Digest.whole(rest.getBytes(StandardCharsets.ISO_8859_1)), Optional.of(line.group(2)));
  }

  /**
   * The text with the line of its hash.
   *
   * @param content laid out over lines, the first of them a brace and the second the format
   */
  static String seal(String content) {
    String hash = Digest.whole(content.getBytes(StandardCharsets.UTF_8));
    int second = content.indexOf('\n', content.indexOf('\n') + 1) + 1;
    return content.substring(0, second)
        + "  \"hash\": \""
        + hash
        + "\",\n"
        + content.substring(second);
  }
}
