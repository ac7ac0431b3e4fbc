package thwartwise.files.rules;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Files inside the program. */
final class BundledFile {
  private BundledFile() {}

  /**
   * The text of one.
   *
   * @param noun what it is, as in "rule set"
   */
  static String text(String resource, String noun) {
    try (InputStream in = BundledFile.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("The program came without its " + noun + " " + resource);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException("The program's " + noun + " cannot be read: " + resource, e);
    }
  }
}
