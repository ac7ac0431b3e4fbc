package thwartwise.shell;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jline.terminal.Terminal;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.shell.core.command.CommandRegistry;
import thwartwise.inspection.Inspection;
import thwartwise.report.RecordPapers;

/**
 * The beans of the program, given to a plain context as suppliers: nothing is scanned and no
 * annotation is read, which takes a third off the start of a command that does little.
 *
 * <p>The commands stand in the order help lists them. The shell library's own {@code help}, {@code
 * version}, {@code script} and {@code clear} are left out: its annotation that enables commands
 * would bring them all.
 */
final class ShellBeans {
  private ShellBeans() {}

  /** The commands and what reads the words typed: all that a one-shot needs. */
  static GenericApplicationContext commands() {
    return commands(
        () ->
            new Inspector(
                Inspection::of,
                RecordPapers::of,
                Clock.systemDefaultZone(),
                ProgramVersion.ofThisJar()));
  }

  static GenericApplicationContext commands(Supplier<Inspector> inspector) {
    GenericApplicationContext context = new GenericApplicationContext();
    register(context, inspector);
    context.refresh();
    return context;
  }

  /** The commands, and who types them: somebody at a terminal, or a pipe. */
  static Prompt prompt(GenericApplicationContext context) {
    Optional<Terminal> terminal = Terminals.open();
    PrintWriter out = terminal.map(Terminal::writer).orElseGet(StandardStreams::out);
    Lines piped = PipedLines.standardInput(out);
    Lines lines = terminal.<Lines>map(t -> CommandLines.at(t, all(context))).orElse(piped);
    Lines answers = terminal.<Lines>map(TerminalAnswers::new).orElse(piped);
    return new Prompt(
        lines,
        out,
        new CommandRunner(
            context.getBean(WordsParser.class),
            context.getBean(CommandRegistry.class),
            out,
            out,
            answers),
        ProgramVersion.ofThisJar());
  }

  private static void register(GenericApplicationContext context, Supplier<Inspector> inspector) {
    context.registerBean(Inspector.class, inspector);
    context.registerBean(WalkCommand.class, () -> new WalkCommand(inspector(context)));
    context.registerBean(
        RefitCommand.class, () -> new RefitCommand(context.getBean(WalkCommand.class)));
    context.registerBean(InspectCommand.class, () -> new InspectCommand(inspector(context)));
    context.registerBean(SeatsCommand.class, () -> new SeatsCommand(inspector(context)));
    context.registerBean(TodayCommand.class, () -> new TodayCommand(inspector(context)));
    context.registerBean(RecordsCommand.class, RecordsCommand::new);
    context.registerBean(CompareCommand.class, CompareCommand::new);
    context.registerBean(FleetCommand.class, () -> new FleetCommand(inspector(context)));
    context.registerBean(DemoCommand.class, () -> new DemoCommand(inspector(context)));
    context.registerBean(HelpCommand.class, () -> new HelpCommand(() -> all(context)));
    context.registerBean(
        VersionCommand.class, () -> new VersionCommand(ProgramVersion.ofThisJar()));
    context.registerBean(QuitCommand.class, QuitCommand::new);
    context.registerBean(CommandRegistry.class, () -> new CommandRegistry());
    context.registerBean(WordsParser.class, () -> new WordsParser(all(context)));
  }

  private static Inspector inspector(GenericApplicationContext context) {
    return context.getBean(Inspector.class);
  }

  private static List<ShellCommand> all(GenericApplicationContext context) {
    return context.getBeanProvider(ShellCommand.class).stream().toList();
  }
}
