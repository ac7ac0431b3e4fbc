package thwartwise.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Pages to read that are about no single command. */
final class HelpPage {
  static final List<String> NAMES =
      List.of(
          "start", "measuring", "people", "waters", "papers", "rules", "boat-file", "exit-codes");

  private HelpPage() {}

  static Optional<String> named(String name) {
    return NAMES.contains(name) ? Optional.of(text(name)) : Optional.empty();
  }

  private static String text(String name) {
    try (InputStream in = HelpPage.class.getResourceAsStream("/thwartwise/help/" + name + ".txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
