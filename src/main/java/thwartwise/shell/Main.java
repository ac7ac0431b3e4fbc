package thwartwise.shell;

import java.io.PrintWriter;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;

/**
 * Where the program starts: with words it runs one command and ends, without any it opens the
 * interactive shell.
 */
public final class Main {
  /** Held, because the log manager forgets loggers nobody holds. */
  private static final Logger ROOT_LOGGER = Logger.getLogger("");

  private Main() {}

  public static void main(String[] arguments) {
    silenceLogging();
    StandardStreams.install();
    System.exit(start(List.of(arguments)));
  }

  private static int start(List<String> words) {
    try {
      return words.isEmpty() ? openShell() : runOnce(words);
    } catch (Throwable e) {
      System.err.println(Failure.of(e).line());
      return Exit.UNUSABLE_INPUT.code();
    }
  }

  private static int openShell() {
    Commands.ofThisJar().prompt().run(new String[0]);
    return Exit.NOTHING_HOLDS_BACK.code();
  }

  private static int runOnce(List<String> words) {
    PrintWriter out = StandardStreams.out();
    try (var answers = new LateAnswers(out)) {
      return Commands.ofThisJar().runner(out, StandardStreams.err(), answers).run(words);
    }
  }

  static void silenceLogging() {
    LogManager.getLogManager().reset();
    ROOT_LOGGER.setLevel(Level.OFF);
  }
}
