package thwartwise.shell;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;
import thwartwise.shell.LineSource.LazyLineSource;

/**
 * The start of the program: with words it runs one command and ends; without any, or with a folder
 * alone, it opens the interactive shell.
 */
public final class Main {
  /** A field, because the log manager forgets loggers without a reference. */
  private static final Logger ROOT_LOGGER = Logger.getLogger("");

  private Main() {}

  public static void main(String[] arguments) {
    silenceLogging();
    StandardStreams.install();
    System.exit(start(List.of(arguments)));
  }

  private static int start(List<String> words) {
    try {
      Optional<String> folder = onlyFolder(words);
      return words.isEmpty() || folder.isPresent() ? openShell(folder) : runOnce(words);
    } catch (Throwable e) {
      System.err.println(Failure.of(e).line());
      return Exit.UNUSABLE_INPUT.code();
    }
  }

  /** The folder of a shell that was started for another folder than that in the home folder. */
  static Optional<String> onlyFolder(List<String> words) {
    String flag = OptionWord.FOLDER.flag();
    if (words.size() == 2 && words.get(0).equals(flag) && !words.get(1).isBlank()) {
      return Optional.of(words.get(1));
    }
    return words.size() == 1 && words.get(0).startsWith(flag + "=")
        ? Optional.of(words.get(0).substring(flag.length() + 1)).filter(f -> !f.isBlank())
        : Optional.empty();
  }

  private static int openShell(Optional<String> folder) {
    Commands.ofThisJar().prompt(folder).run(new String[0]);
    return Exit.NOTHING_HOLDS_BACK.code();
  }

  private static int runOnce(List<String> words) {
    PrintWriter out = StandardStreams.out();
    try (var answers = new LazyLineSource(out)) {
      return Commands.ofThisJar().runner(out, StandardStreams.err(), answers).run(words);
    }
  }

  static void silenceLogging() {
    LogManager.getLogManager().reset();
    ROOT_LOGGER.setLevel(Level.OFF);
  }
}
