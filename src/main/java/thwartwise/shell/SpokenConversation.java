package thwartwise.shell;

import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.UserInterruptException;
import org.springframework.shell.core.command.CommandContext;

/** The conversation a command holds with whoever runs it. */
record SpokenConversation(CommandContext context) implements Conversation {

  @Override
  public void say(String text) {
    context.outputWriter().println(text);
    context.outputWriter().flush();
  }

  /** Ctrl-C, Ctrl-D and the end of a pipe all mean: leave. */
  @Override
  public Optional<String> ask(String prompt) {
    try {
      return Optional.of(context.inputReader().readInput(prompt + " "));
    } catch (UserInterruptException | EndOfFileException e) {
      return Optional.empty();
    } catch (Exception e) {
      throw new IllegalStateException("the answer could not be read", e);
    }
  }
}
