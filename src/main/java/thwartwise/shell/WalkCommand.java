package thwartwise.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.AnswersFile;
import thwartwise.archive.NewRecord;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.files.rules.ChecklistFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.hull.UnusableBoat;
import thwartwise.json.UnusableInput;
import thwartwise.measure.PrintableText;
import thwartwise.record.RecordEntry;
import thwartwise.report.ComparisonSummary;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;
import thwartwise.shell.Conversation.SpokenConversation;
import thwartwise.walk.InterimSummary;
import thwartwise.walk.PreviousBoats;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.stations.StationTable;

/** Measures a boat by questions, then inspects it. */
final class WalkCommand implements ShellCommand {
  private static final String STOPPED = "Stopped. Nothing was written, and your answers are kept.";

  static final OptionWord STATIONS =
      new OptionWord(
          "stations", "FILE", "a table of all stations, shown before it is taken", false);

  private final Inspector inspector;

  WalkCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "walk";
  }

  @Override
  public String getDescription() {
    return "measure a boat step by step, then inspect it";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(STATIONS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Asks for everything there is to measure, one question at a time, in an order
        a person with a tape measure, bathroom scales and a litre jug can follow. Its
        first question is whose boat it is: your own is measured in full; a borrowed
        one takes a dozen questions, twenty where a trial was seen, and what is not
        measured is taken at the end that flatters nobody; of a boat measured before,
        only what has changed is asked.
        Answers may be metric or in feet, inches and pounds; each is repeated in the
        unit it was understood in. At every question you can also type

          back    return to the question before
          list    see the answers so far, numbered
          change  answer a question again: change 12
          again   a whole row again: again kit 2; list kit shows the rows
          why     how to measure this, and what it is for
          show    a sketch of what is measured where
          skip    leave it out; the walk says what is assumed
          stop    leave; the answers are kept (Ctrl-C and Ctrl-D do the same)

        Every answer is saved as soon as it is taken. Type "walk" again to go on with
        a walk that is not finished. At the end the boat is inspected, boat file and
        dated record are written together, and one screen shows the result.
        Ctrl-C during that work leaves everything as it was.
        Answers may also come from a pipe. All stations can be given at once, pasted
        or by --stations FILE, and one thing of several on one line: "help stations".
        "sheet" prints a sheet to fill in with a pencil beforehand. Last of all you may
        look the fittings over at once ("help look"), or later.

        Exit codes are those of "inspect"; 2 when the walk was left before its end.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    return execute(context, List.of());
  }

  /**
   * Runs the walk.
   *
   * @param already answers that a new walk has from the start
   */
  ExitStatus execute(CommandContext context, List<Answer> already) {
    Workspace workspace = new CommandInput(context).workspace();
    // An invalid rules file or checklist is reported before an hour of measuring, not after it.
    RuleBooks.of(workspace, List.of());
    ChecklistFile.checked(workspace.checklistFiles());
    Optional<String> table = stationTable(new CommandInput(context));
    Conversation conversation = new SpokenConversation(context);
    return new DraftChoice(conversation, workspace, inspector.now())
        .choose()
        .flatMap(held -> walked(held, already, table, conversation))
        .map(finished -> reported(finished, context, conversation))
        .orElseGet(() -> left(context))
        .status();
  }

  private Optional<Finished> walked(
      DraftChoice.LockedDraft held,
      List<Answer> already,
      Optional<String> table,
      Conversation conversation) {
    try (held) {
      boolean begins = held.draft().answers().isEmpty() && !already.isEmpty();
      if (begins) {
        held.draft().save(already);
      }
      conversation.print(begins ? CHANGES_ALONE : opening(held.draft()));
      return walked(held.draft(), table, conversation);
    }
  }

  /**
   * Inspects the boat. An inspection that finds a contradiction in the measurements leaves the walk
   * open for corrections.
   */
  private Optional<Finished> walked(
      Draft draft, Optional<String> table, Conversation conversation) {
    try (InterimLine running = running()) {
      return walked(
          draft,
          conversation,
          new WalkConversation(conversation, walk(draft.workspace()), draft, running)
              .withTable(table));
    }
  }

  /** A person who measured the boat has read the introduction as well. */
  private static final String CHANGES_ALONE =
      "What has changed is asked for; the rest stays as it was measured. These always\n"
          + "work: back, list, change 12, why, show, skip, stop.";

  /** A person who continues a draft has read the introduction. */
  private static String opening(Draft draft) {
    int answers = draft.answers().size();
    return answers < 2
        ? Walk.OPENING
        : "Going on after answer number " + answers + "; list shows them all.";
  }

  private InterimLine running() {
    RuleSet rules = RuleSetFile.cautiousDefault();
    return InterimLine.atTerminal(known -> InterimSummary.of(known, rules, inspector.today()));
  }

  private Optional<Finished> walked(Draft draft, Conversation conversation, WalkConversation walk) {
    while (true) {
      Optional<Boat> boat = walk.boat();
      if (boat.isEmpty()) {
        return Optional.empty();
      }
      try {
        return Optional.of(inspected(boat.get(), draft, conversation));
      } catch (CancellationException e) {
        conversation.print(STOPPED);
        return Optional.empty();
      } catch (UnusableBoat e) {
        conversation.print(e.getMessage());
        conversation.print("Type list to find that answer, then change and its number.");
        walk.reopen();
      }
    }
  }

  private Walk walk(Workspace workspace) {
    return Walk.on(
        inspector.today(), new PreviousBoats(workspace.boats()), RuleSetFile.cautiousDefault());
  }

  /**
   * Everything is computed before anything is written; then boat file, record and pages appear and
   * the draft goes, all at once. Ctrl-C before that leaves everything as it was.
   */
  private Finished inspected(Boat walked, Draft draft, Conversation conversation) {
    Boat boat =
        ProofReassessment.afterChanges(walked, RuleSetFile.cautiousDefault(), inspector.today());
    Workspace workspace = draft.workspace();
    Path file = workspace.boatPath(boat.name());
    if (Files.exists(file)) {
      conversation.print("A boat file of that name is there already; this one takes its place.");
    }
    conversation.print(
        "Working it out. This takes some seconds; with many seats up to a few minutes.");
    RuleBook book = RuleBooks.of(workspace, List.of());
    var inspection = inspector.inspect(boat, Optional.empty(), book);
    NewRecord record = inspector.record(inspection).withBoatFile().ending(draft.name());
    Inspector.SavedInspection kept = inspector.save(record, workspace);
    conversation.print("");
    return new Finished(kept, file);
  }

  /** The saved record and its boat file. */
  private record Finished(Inspector.SavedInspection saved, Path boat) {}

  private Exit reported(Finished finished, CommandContext context, Conversation conversation) {
    Workspace workspace = new CommandInput(context).workspace();
    compared(finished, workspace).ifPresent(page -> context.outputWriter().println(page));
    InspectionOutput.printSaved(finished.saved(), new CommandInput(context));
    Optional<Boat> found =
        new LookOffer(conversation, inspector.today(), workspace).made(finished.boat());
    return found.filter(LookOffer::isGrave).isPresent()
        ? Exit.HOLDS_BACK
        : Exit.of(finished.saved().report());
  }

  /** The effect of the changes, when the boat was inspected before. */
  private static Optional<String> compared(Finished finished, Workspace workspace) {
    List<RecordEntry> kept =
        workspace.records().of(finished.saved().inspection().boat().name()).entries();
    int last = kept.size() - 1;
    return last < 1
        ? Optional.empty()
        : Optional.of(ComparisonSummary.of(kept.get(last - 1), kept.get(last)));
  }

  private static Exit left(CommandContext context) {
    String same = new CommandInput(context).has(OptionWord.FOLDER) ? " with the same --folder" : "";
    context.outputWriter().println("Type walk again" + same + " to go on.");
    return Exit.UNUSABLE_INPUT;
  }

  /**
   * The text of the table, if one is named.
   *
   * @throws UnusableInput when it cannot be read, or is no table: better now than after an hour
   */
  static Optional<String> stationTable(CommandInput given) {
    if (!given.has(WalkCommand.STATIONS)) {
      return Optional.empty();
    }
    Path file = given.path(WalkCommand.STATIONS);
    String text = AnswersFile.read(file);
    StationTable.fault(text)
        .ifPresent(
            fault -> {
              throw new UnusableInput(PrintableText.of(file.toString()) + ": " + fault);
            });
    return Optional.of(text);
  }
}
