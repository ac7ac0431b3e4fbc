package thwartwise.shell;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Somebody at a terminal: reads the screen and types only after seeing what was waited for. */
final class Typist implements AutoCloseable {
  static final String CTRL_C = "\u0003";
  static final String CTRL_D = "\u0004";

  private final PtyProcess process;
  private final StringBuffer screen = new StringBuffer();

  /** The screen without line ends, up to {@link #flattened}. */
  private final StringBuilder plain = new StringBuilder();

  private int flattened;
  private int seen;

  private Typist(PtyProcess process) {
    this.process = process;
    Thread reader = new Thread(this::read, "screen");
    reader.setDaemon(true);
    reader.start();
  }

  static Typist at(PackagedJar jar, Path folder, String... words) throws IOException {
    return new Typist(
        new PtyProcessBuilder(jar.command(words).toArray(String[]::new))
            .setEnvironment(jar.environment())
            .setDirectory(folder.toString())
            .setInitialColumns(80)
            .setInitialRows(30)
            .start());
  }

  private void read() {
    try (Reader in = new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)) {
      char[] buffer = new char[4096];
      int count = in.read(buffer);
      while (count >= 0) {
        shown(new String(buffer, 0, count));
        count = in.read(buffer);
      }
    } catch (IOException closed) {
      // The other end is gone; what it showed last has been read.
    }
  }

  private void shown(String more) {
    synchronized (screen) {
      screen.append(more);
      screen.notifyAll();
    }
  }

  /** Waits for the text to appear after everything waited for before. */
  Typist sees(String text) throws InterruptedException {
    long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(PackagedJar.GENEROUS_SECONDS);
    String wanted = flat(text);
    synchronized (screen) {
      while (plain().indexOf(wanted, seen) < 0) {
        if (System.nanoTime() > deadline) {
          throw new AssertionError("Never saw \"" + text + "\" after:\n" + screen());
        }
        screen.wait(TimeUnit.SECONDS.toMillis(1));
      }
      seen = plain.indexOf(wanted, seen) + wanted.length();
    }
    return this;
  }

  /**
   * A line that reaches the edge of the terminal is broken there, so line ends are left out. Only
   * what is new is read each time, because a walk draws its line again at every key.
   */
  private StringBuilder plain() {
    int end = screen.length();
    int escape = screen.lastIndexOf("\u001b");
    if (escape >= flattened && screen.substring(escape).matches(BEGUN)) {
      end = escape;
    }
    plain.append(flat(withoutMoves(screen.substring(flattened, end))));
    flattened = end;
    return plain;
  }

  /** What moves the cursor, of which the end was not read yet. */
  private static final String BEGUN = "\u001b(\\[[0-9;?]*)?";

  static String flat(String text) {
    return text.replaceAll("\\s+", "");
  }

  Typist types(String line) throws IOException {
    return presses(line + "\r");
  }

  Typist presses(String keys) throws IOException {
    process.getOutputStream().write(keys.getBytes(StandardCharsets.UTF_8));
    process.getOutputStream().flush();
    return this;
  }

  /** Everything shown so far, without what only moves the cursor. */
  String screen() {
    return withoutMoves(raw());
  }

  private static String withoutMoves(String shown) {
    return shown.replaceAll("\u001b\\[[0-9;?]*[A-Za-z]", "").replaceAll("\u001b[=>]", "");
  }

  /** What is left to read: a line of progress is written over by what comes after it. */
  String readable() {
    return Stream.of(screen().split("\n"))
        .map(Typist::overwritten)
        .collect(Collectors.joining("\n"));
  }

  private static String overwritten(String line) {
    StringBuilder cells = new StringBuilder();
    for (String written : line.split("\r")) {
      cells.replace(0, Math.min(written.length(), cells.length()), written);
    }
    return cells.toString();
  }

  /** Everything the program sent to the terminal. */
  String raw() {
    return screen.toString();
  }

  int exitCode() throws InterruptedException {
    if (!process.waitFor(PackagedJar.GENEROUS_SECONDS, TimeUnit.SECONDS)) {
      throw new AssertionError("It never ended:\n" + screen());
    }
    return process.exitValue();
  }

  /** Like a power cut: the program gets no chance to say goodbye. */
  void kill() throws InterruptedException {
    process.destroyForcibly();
    process.waitFor(PackagedJar.GENEROUS_SECONDS, TimeUnit.SECONDS);
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
