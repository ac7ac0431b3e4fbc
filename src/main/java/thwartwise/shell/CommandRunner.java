package thwartwise.shell;

import java.io.PrintWriter;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.springframework.shell.core.InputReader;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandExecutor;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.ParsedInput;

/**
 * Runs one command from its words: results go to one writer, a one-line error to the other, and
 * every run ends with an exit code of ours. It is the same at the prompt and for one-shots.
 */
final class CommandRunner {
  private final CommandLineParser parser;
  private final CommandRegistry registry;
  private final PrintWriter results;
  private final PrintWriter errors;
  private final InputReader answers;
  private final UnaryOperator<String> broken;

  /**
   * @param broken an error as its reader sees it: one line for a script, wrapped for a person at a
   *     terminal
   */
  CommandRunner(
      CommandLineParser parser,
      CommandRegistry registry,
      PrintWriter results,
      PrintWriter errors,
      InputReader answers,
      UnaryOperator<String> broken) {
    this.parser = parser;
    this.registry = registry;
    this.results = results;
    this.errors = errors;
    this.answers = answers;
    this.broken = broken;
  }

  int run(List<String> words) {
    return run(() -> parser.parse(words));
  }

  int run(String line) {
    return run(() -> parser.parse(line));
  }

  /** The exit code; stopped work and internal errors count as unusable input. */
  private int run(Supplier<ParsedInput> words) {
    try {
      return execute(words.get());
    } catch (Exception | StackOverflowError | OutOfMemoryError e) {
      results.flush();
      errors.println(broken.apply(Failure.of(e).line()));
      return Exit.UNUSABLE_INPUT.code();
    } finally {
      results.flush();
      errors.flush();
    }
  }

  private int execute(ParsedInput words) {
    CommandContext context = new CommandContext(words, registry, results, answers);
    return new CommandExecutor(registry).execute(context).code();
  }
}
