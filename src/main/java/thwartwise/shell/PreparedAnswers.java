package thwartwise.shell;

import java.io.BufferedReader;
import java.io.StringReader;
import org.springframework.shell.core.command.CommandContext;
import thwartwise.archive.AnswersFile;
import thwartwise.shell.Conversation.SpokenConversation;
import thwartwise.shell.LineSource.PipedLines;

/** Answers for a command from a file instead of from a person. */
final class PreparedAnswers {
  static final OptionWord ANSWERS =
      new OptionWord("answers", "FILE", "take the answers from a file, one a line", false);

  private PreparedAnswers() {}

  /** The conversation with the file, or else with the person who runs the command. */
  static Conversation conversation(CommandContext context, CommandInput given) {
    if (!given.has(ANSWERS)) {
      return new SpokenConversation(context);
    }
    String lines = AnswersFile.read(given.path(ANSWERS));
    return new SpokenConversation(
        new CommandContext(
            context.parsedInput(),
            context.commandRegistry(),
            context.outputWriter(),
            new PipedLines(new BufferedReader(new StringReader(lines)), context.outputWriter())));
  }
}
