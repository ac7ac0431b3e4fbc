package thwartwise.shell;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jline.terminal.Terminal;
import org.springframework.shell.core.InputReader;
import org.springframework.shell.core.command.CommandRegistry;
import thwartwise.archive.Workspace;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.report.RecordPapers;
import thwartwise.shell.LineSource.PipedLines;
import thwartwise.shell.LineSource.TerminalAnswers;

/**
 * The commands in the order of help. The shell library's registry and executor run them. There is
 * no application context, which would cost more than a whole run of a small command. A command
 * reads nothing until it runs, for the same reason.
 */
final class Commands {
  private final List<ShellCommand> all;

  private Commands(List<ShellCommand> all) {
    this.all = all;
  }

  static Commands ofThisJar() {
    return of(
        new Inspector(
            (boat, book, today, progress) ->
                Inspection.judged(boat, book, RuleSetFile.measuringSpreads(), today, progress),
            RecordPapers::of,
            Clock.systemDefaultZone(),
            ProgramVersion.ofThisJar()),
        Pager.ofTerminal(System.getenv()));
  }

  static Commands of(Inspector inspector) {
    return of(inspector, Pager.NONE);
  }

  static Commands of(Inspector inspector, Pager pager) {
    WalkCommand walk = new WalkCommand(inspector);
    List<ShellCommand> all = new ArrayList<>();
    all.add(walk);
    all.add(new SheetCommand(inspector));
    all.add(new RefitCommand(walk));
    all.add(new LookCommand(inspector));
    all.add(new InspectCommand(inspector));
    all.add(new SeatsCommand(inspector));
    all.add(new SupposeCommand(inspector));
    all.add(new SpreadCommand(inspector));
    all.add(new ProveCommand(inspector));
    all.add(new RangeCommand(inspector));
    all.add(new WiringCommand(inspector));
    all.add(new TodayCommand(inspector));
    all.add(new PageCommand(pager));
    all.add(new ShowCommand(pager));
    all.add(new RecordsCommand());
    all.add(new CompareCommand());
    all.add(new FleetCommand(inspector));
    all.add(new DemoCommand(inspector));
    all.add(new HelpCommand(() -> all));
    all.add(new VersionCommand(ProgramVersion.ofThisJar()));
    all.add(new QuitCommand());
    return new Commands(List.copyOf(all));
  }

  CommandRunner runner(PrintWriter results, PrintWriter errors, InputReader answers) {
    return runner(results, errors, answers, Optional.empty(), UnaryOperator.identity());
  }

  /**
   * @param folder for every line that names none
   */
  CommandRunner runner(
      PrintWriter results,
      PrintWriter errors,
      InputReader answers,
      Optional<String> folder,
      UnaryOperator<String> broken) {
    CommandRegistry registry = new CommandRegistry(new LinkedHashSet<>(all));
    return new CommandRunner(
        new CommandLineParser(all, folder), registry, results, errors, answers, broken);
  }

  /** The commands, and the person at a terminal or the pipe that types them. */
  Prompt prompt(Optional<String> folder) {
    return prompt(Terminals.open(), folder);
  }

  /** Without a terminal, input comes from a pipe. */
  Prompt prompt(Optional<Terminal> terminal, Optional<String> folder) {
    Workspace workspace =
        folder.map(CommandInput::asPath).map(Workspace::new).orElseGet(CommandInput::homeWorkspace);
    PrintWriter out = terminal.map(Terminal::writer).orElseGet(StandardStreams::out);
    LineSource piped = PipedLines.standardInput(out);
    LineSource lines =
        terminal.<LineSource>map(t -> CommandLines.at(t, all, workspace)).orElse(piped);
    LineSource answers = terminal.<LineSource>map(TerminalAnswers::new).orElse(piped);
    UnaryOperator<String> broken =
        terminal.isPresent() ? TerminalLines::fitted : UnaryOperator.identity();
    return new Prompt(
        lines, out, runner(out, out, answers, folder, broken), ProgramVersion.ofThisJar());
  }
}
