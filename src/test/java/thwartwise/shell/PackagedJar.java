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

/**
 * The jar as it is shipped, run as another process, with the archive of its classes as its launcher
 * runs it. Most runs here last a second or two and are over before Java's second compiler has
 * earned what it costs, so they do without.
 */
final class PackagedJar {
  /** What a one-shot printed and how it ended. */
  record Outcome(int code, String out, String err) {}

  static final long GENEROUS_SECONDS = 240;

  /** What the build leaves beside the jar, so that a hundred starts take half their time. */
  private static final Path ARCHIVE =
      Path.of(System.getProperty("thwartwise.jar", "thwartwise.jar"))
          .resolveSibling("thwartwise.jsa");

  private final Map<String, String> environment = new HashMap<>();
  private final Path folder;
  private List<String> compiler = List.of("-XX:TieredStopAtLevel=1");

  PackagedJar(Path folder) {
    this.folder = folder;
  }

  PackagedJar with(String variable, String value) {
    environment.put(variable, value);
    return this;
  }

  /** With both compilers, which inline as little as the launcher has them inline. */
  PackagedJar asItsLauncherRunsIt() throws IOException {
    String launcher = Files.readString(ARCHIVE.resolveSibling("thwartwise"));
    String flags = launcher.replaceFirst("(?s).*\\ncompiler=\"([^\"]+)\".*", "$1");
    compiler = List.of(flags.split(" "));
    return this;
  }

  /** The command line, with the working folder and home in a place of the test's own. */
  List<String> command(String... words) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-XX:+UseSerialGC");
    command.addAll(compiler);
    command.add("-XX:SharedArchiveFile=" + ARCHIVE);
    command.add("-Xlog:disable");
    command.add("-Xlog:all=error:stderr");
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
      throw new AssertionError("It never ended: " + Files.readString(out));
    }
    return new Outcome(process.exitValue(), Files.readString(out), Files.readString(err));
  }

  private Process start(Path out, Path err, String... words) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command(words)).directory(folder.toFile());
    builder.environment().putAll(environment);
    return builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
  }
}
