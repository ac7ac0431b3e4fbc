package thwartwise.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import org.springframework.shell.core.command.ParsedInput;
import thwartwise.files.boat.BoatSchema;
import thwartwise.json.CanonicalNumbers;
import thwartwise.json.Layout;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.BoatProperties.PropertyGroup;
import thwartwise.measured.Property;
import thwartwise.page.LineWrap;

/** The commands in the order in which a newcomer needs them, and a page for each. */
final class HelpCommand implements ShellCommand {
  private static final String NAME = "help";

  /** The page for programs. */
  private static final String SCHEMA = "boat-schema";

  private static final String KEYS_OF = "boat-file";
  private static final String INDENT = " ".repeat(7);
  private static final int WIDTH = 80;
  private static final int NARROWEST = 12;
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
      "help walk" explains the walk; so does "walk --help". To read: "help start",
      for the first evening; measuring, for the boat on its trestles; stations;
      people; waters; papers; rules; checklists; boat-file; boat-schema; electrics;
      exit-codes.

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
      explain(arguments.get(0).value(), out);
    }
    return Exit.NOTHING_HOLDS_BACK.status();
  }

  /** A page about no command, or the page of one. */
  private void explain(String name, PrintWriter out) {
    Optional<String> page =
        name.equals(SCHEMA)
            ? Optional.of(Layout.of(CanonicalNumbers.in(BoatSchema.tree())))
            : HelpPage.named(name);
    page.ifPresentOrElse(out::print, () -> explain(named(name), out));
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
    commands
        .get()
        .forEach(command -> row(command.getName(), NARROWEST, command.getDescription(), out));
    out.println();
    out.print(CLOSING);
  }

  private static void explain(ShellCommand command, PrintWriter out) {
    out.println(command.getName() + ": " + command.getDescription());
    out.println();
    LineWrap.lines("Usage: " + usage(command), "", INDENT, WIDTH).forEach(out::println);
    out.println();
    out.print(command.details());
    if (!command.words().isEmpty()) {
      out.println();
      int longest = command.words().stream().mapToInt(w -> w.shown().length()).max().orElse(0);
      int width = Math.max(NARROWEST, longest);
      command.words().forEach(word -> row(word.shown(), width, word.meaning(), out));
    }
  }

  private static String usage(ShellCommand command) {
    StringBuilder usage = new StringBuilder(command.getName());
    command.argument().ifPresent(name -> usage.append(" [").append(name).append(']'));
    for (OptionWord word : command.words()) {
      // An option and its value stay on one line.
      String shown = word.shown().replace(" ", UnitFormat.TIED);
      usage.append(word.required() ? " " + shown : " [" + shown + "]");
    }
    return usage.toString();
  }

  private static void row(String word, int width, String meaning, PrintWriter out) {
    out.println("  " + word + " ".repeat(width - word.length()) + "  " + meaning);
  }

  /** Pages that are about no single command. */
  static final class HelpPage {
    static final List<String> NAMES =
        List.of(
            "start",
            "measuring",
            "stations",
            "people",
            "waters",
            "papers",
            "rules",
            "checklists",
            "boat-file",
            "electrics",
            "exit-codes");

    private HelpPage() {}

    static Optional<String> named(String name) {
      return NAMES.contains(name)
          ? Optional.of(text(name) + (name.equals(KEYS_OF) ? BoatKeyTable.text() : ""))
          : Optional.empty();
    }

    private static String text(String name) {
      try (InputStream in =
          HelpPage.class.getResourceAsStream("/thwartwise/help/" + name + ".txt")) {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** The single values of a boat file, object by object: key, range, and default. */
  private static final class BoatKeyTable {
    private static final int WIDTH = 80;
    private static final int KEY = 18;
    private static final String OPENING =
        """

        Single values, each with its range, and after "else" what is taken when it is
        left out. "help boat-schema" prints all of the file as a JSON Schema, for
        editors and programs.
        """;

    private BoatKeyTable() {}

    static String text() {
      return OPENING
          + PropertyGroup.ALL.stream().flatMap(BoatKeyTable::lines).collect(Collectors.joining());
    }

    private static Stream<String> lines(PropertyGroup group) {
      String place =
          group.place().isEmpty()
              ? "At the top"
              : "In \"" + group.place().replace(" ", "\", \"") + "\"";
      return Stream.concat(
          Stream.of("\n" + place + ":\n\n"),
          group.properties().stream().flatMap(each -> row(each).stream()).map(line -> line + "\n"));
    }

    private static List<String> row(Property<?, ?> property) {
      String otherwise = property.whenOmitted().isEmpty() ? "" : "; else " + property.whenOmitted();
      String key = "  " + property.key();
      return LineWrap.lines(
          property.type().described() + otherwise,
          key + " ".repeat(KEY - key.length()) + "  ",
          " ".repeat(KEY + 4),
          WIDTH);
    }
  }
}
