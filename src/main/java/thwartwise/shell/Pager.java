package thwartwise.shell;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Shows a text that is longer than a screen. */
interface Pager {
  /** Prints the text without pages. */
  Pager NONE = (text, out) -> out.println(text);

  void show(String text, PrintWriter out);

  /**
   * The pager of the terminal; none where input or output is a pipe, or where it can only print.
   */
  static Pager ofTerminal(Map<String, String> environment) {
    boolean prints = environment.getOrDefault("TERM", "dumb").startsWith("dumb");
    if (System.console() == null || prints) {
      return NONE;
    }
    Optional<List<String>> command = command(environment);
    return (text, out) -> {
      if (command.isEmpty() || !shown(text, command.get(), out)) {
        NONE.show(text, out);
      }
    };
  }

  /** The command in PAGER; otherwise less or more, if there is one. */
  static Optional<List<String>> command(Map<String, String> environment) {
    String named = environment.getOrDefault("PAGER", "");
    if (!named.isBlank()) {
      return Optional.of(List.of("sh", "-c", named));
    }
    List<Path> folders =
        Stream.of(environment.getOrDefault("PATH", "").split(java.io.File.pathSeparator))
            .filter(folder -> !folder.isBlank())
            .map(Path::of)
            .toList();
    return Stream.of("less", "more")
        .filter(name -> folders.stream().anyMatch(f -> Files.isExecutable(f.resolve(name))))
        .map(List::of)
        .findFirst();
  }

  /** False if it did not start. A reader who leaves it early has seen enough. */
  private static boolean shown(String text, List<String> command, PrintWriter out) {
    out.flush();
    ProcessBuilder builder = new ProcessBuilder(command);
    builder
        .redirectOutput(ProcessBuilder.Redirect.INHERIT)
        .redirectError(ProcessBuilder.Redirect.INHERIT);
    // Options to end at once if the text fits the screen, and to leave it there.
    builder.environment().putIfAbsent("LESS", "FRX");
    builder.environment().putIfAbsent("LESSCHARSET", "utf-8");
    Process process;
    try {
      process = builder.start();
    } catch (IOException e) {
      return false;
    }
    try (OutputStream in = process.getOutputStream()) {
      in.write((text + "\n").getBytes(UTF_8));
    } catch (IOException left) {
      // The reader left it before the end.
    }
    return InterruptibleWork.uninterrupted(() -> ended(process));
  }

  private static boolean ended(Process process) {
    try {
      process.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return true;
  }
}
