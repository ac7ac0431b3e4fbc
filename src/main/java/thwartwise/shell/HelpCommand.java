package thwartwise.shell;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import org.springframework.shell.core.command.ParsedInput;

/** The list of commands in the order a newcomer needs them, and a page for each. */
final class HelpCommand implements ShellCommand {
  private static final String NAME = "help";
  private static final String OPENING =
      """
      thwartwise works out from measurements how many people and how much weight a
      small open boat can carry before it tips, floods or sinks, and whether it holds
      them up when swamped.
      """;
  private static final String CLOSING =
      """
      Every command takes --folder DIR, where boats, drafts and records are kept;
      without it that is the folder "thwartwise" in your home.
      "help walk" explains the walk; so does "walk --help".

      A recommendation is no permission: it takes the boat, the water and the people
      as they were measured. Local rules and licensed practice come first.
      """;

  private final Supplier<List<ShellCommand>> commands;

  HelpCommand(Supplier<List<ShellCommand>> commands) {
    this.commands = commands;
  }

  /** The words that ask for the page of one command. */
  static ParsedInput about(ShellCommand command) {
    return ParsedInput.builder()
        .commandName(NAME)
        .addArgument(new CommandArgument(0, command.getName()))
        .build();
  }

  @Override
  public String getName() {
    return NAME;
  }

  @Override
  public String getDescription() {
    return "list the commands, or explain one";
  }

  @Override
  public Optional<String> argument() {
    return Optional.of("COMMAND");
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return "Without a command it lists them all.\n";
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    PrintWriter out = context.outputWriter();
    List<CommandArgument> arguments = context.parsedInput().arguments();
    if (arguments.isEmpty()) {
      list(out);
    } else {
      explain(named(arguments.get(0).value()), out);
    }
    return Exit.NOTHING_HOLDS_BACK.status();
  }

  private ShellCommand named(String name) {
    List<ShellCommand> all = commands.get();
    return all.stream()
        .filter(command -> command.getName().equals(name))
        .findFirst()
        .orElseThrow(
            () -> UsageError.unknownCommand(name, all.stream().map(c -> c.getName()).toList()));
  }

  private void list(PrintWriter out) {
    out.println(OPENING);
    commands.get().forEach(command -> row(command.getName(), command.getDescription(), out));
    out.println();
    out.print(CLOSING);
  }

  private static void explain(ShellCommand command, PrintWriter out) {
    out.println(command.getName() + ": " + command.getDescription());
    out.println();
    out.println("Usage: " + usage(command));
    out.println();
    out.print(command.details());
    if (!command.words().isEmpty()) {
      out.println();
      command.words().forEach(word -> row(word.shown(), word.meaning(), out));
    }
  }

  private static String usage(ShellCommand command) {
    StringBuilder usage = new StringBuilder(command.getName());
    command.argument().ifPresent(name -> usage.append(" [").append(name).append(']'));
    for (OptionWord word : command.words()) {
      usage.append(word.required() ? " " + word.shown() : " [" + word.shown() + "]");
    }
    return usage.toString();
  }

  private static void row(String word, String meaning, PrintWriter out) {
    out.println(String.format(Locale.ROOT, "  %-12s  %s", word, meaning));
  }
}
