package thwartwise.shell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The jar as it is shipped, run as another process. */
final class PackagedJar {
  /** What a one-shot printed and how it ended. */
  record Outcome(int code, String out, String err) {}

  static final long GENEROUS_SECONDS = 600;

  /**
   * Classes as the machine keeps them once loaded, so that a hundred starts take half their time;
   * nothing changes when the file is not there.
   */
  private static final Path CLASSES =
      Path.of(System.getProperty("thwartwise.jar", "thwartwise.jar")).resolveSibling("classes.jsa");

  private final Map<String, String> environment = new HashMap<>();
  private final Path folder;

  PackagedJar(Path folder) {
    this.folder = folder;
  }

  /** Leaves the classes that the beginning of a walk needs for all later starts. */
  void keepClasses() throws IOException, InterruptedException {
    Files.deleteIfExists(CLASSES);
    List<String> command = command("walk");
    command.set(1, "-XX:ArchiveClassesAtExit=" + CLASSES);
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    process.getOutputStream().close();
    process.waitFor(GENEROUS_SECONDS, TimeUnit.SECONDS);
  }

  PackagedJar with(String variable, String value) {
    environment.put(variable, value);
    return this;
  }

  /** The command line, with the working folder and home in a place of the test's own. */
  List<String> command(String... words) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-XX:SharedArchiveFile=" + CLASSES);
    command.add("-Duser.home=" + folder);
    command.add("-jar");
    command.add(System.getProperty("thwartwise.jar"));
    command.addAll(List.of(words));
    return command;
  }

  Map<String, String> environment() {
    Map<String, String> all = new HashMap<>(System.getenv());
    all.putAll(environment);
    return all;
  }

  Outcome run(String... words) throws IOException, InterruptedException {
    return runWithInput("", words);
  }

  Outcome runWithInput(String input, String... words) throws IOException, InterruptedException {
    Path out = folder.resolve("standard.out");
    Path err = folder.resolve("standard.err");
    Process process = start(out, err, words);
    try (var stream = process.getOutputStream()) {
      stream.write(input.getBytes(StandardCharsets.UTF_8));
    }
    if (!process.waitFor(GENEROUS_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("It never ended: " + java.nio.file.Files.readString(out));
    }
    return new Outcome(
        process.exitValue(),
        java.nio.file.Files.readString(out),
        java.nio.file.Files.readString(err));
  }

  private Process start(Path out, Path err, String... words) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command(words)).directory(folder.toFile());
    builder.environment().putAll(environment);
    return builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
  }
}
