package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.UserInterruptException;
import org.springframework.shell.core.command.CommandContext;

/** A partner to talk to: at a terminal, through a pipe, or in a test. */
interface Conversation {

  void print(String text);

  /** The line typed at the prompt; empty when the partner leaves or is gone. */
  Optional<String> ask(String prompt);

  /** The same with likely words, which a terminal completes. */
  default Optional<String> ask(String prompt, List<String> likely) {
    return ask(prompt);
  }

  /** Whether a person reads each question before the answer is typed. */
  boolean isAtTerminal();

  /** The conversation of a command with the person who runs it. */
  record SpokenConversation(CommandContext context) implements Conversation {

    @Override
    public void print(String text) {
      context.outputWriter().println(text);
      context.outputWriter().flush();
    }

    @Override
    public Optional<String> ask(String prompt) {
      return ask(prompt, List.of());
    }

    /** Ctrl-C, Ctrl-D and the end of a pipe all mean: leave. */
    @Override
    public Optional<String> ask(String prompt, List<String> likely) {
      try {
        return Optional.of(line(prompt + " ", likely));
      } catch (UserInterruptException | EndOfFileException e) {
        return Optional.empty();
      } catch (Exception e) {
        throw new IllegalStateException("the answer could not be read", e);
      }
    }

    @Override
    public boolean isAtTerminal() {
      return context.inputReader() instanceof LineSource lines && lines.isTerminal();
    }

    private String line(String prompt, List<String> likely) throws Exception {
      return context.inputReader() instanceof LineSource lines
          ? lines.readInput(prompt, likely)
          : context.inputReader().readInput(prompt);
    }
  }
}
