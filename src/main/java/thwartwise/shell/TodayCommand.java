package thwartwise.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;
import thwartwise.measure.YesOrNo;
import thwartwise.page.LineWrap;
import thwartwise.page.TextForm;
import thwartwise.record.InspectionRecord;
import thwartwise.report.KneeDeepTrial;
import thwartwise.today.TodayPage;
import thwartwise.today.TodayPage.Answered;
import thwartwise.today.TodayVerdict;
import thwartwise.today.TodayVerdict.Point;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.QuestionDefinition;

/** Asks the last questions before somebody goes afloat today. */
final class TodayCommand implements ShellCommand {
  private final Inspector inspector;

  TodayCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "today";
  }

  @Override
  public String getDescription() {
    return "ask what must be so before anybody goes out today";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(
        OptionWord.BOAT,
        PreparedAnswers.ANSWERS,
        OptionWord.RULES,
        UnitsChoice.UNITS,
        OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Inspects the boat as of now, shows the figures of today to be read aloud,
        and asks ten questions about them, the people and the water. Each is
        answered with yes, no or don't know; anything but yes stays an open point,
        and so does every question left when the input ends. back, list, change,
        why and stop work as in the walk. Of a boat with nothing to show that it
        holds anybody up full of water it asks first what was seen in the trial in
        knee-deep water, if that was done today. The record and the answers are
        kept in the folder, under records.

        Exit codes, for scripts:
          0  nothing found against it today within the limits of this inspection
          1  not today
          2  the file cannot be used; nothing was written
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Conversation conversation = PreparedAnswers.conversation(context, given);
    Path file = BoatChoice.of(given, this);
    Boat boat = UnitsChoice.of(BoatFile.read(file), given, this);
    conversation.print(
        "Working it out. This takes some seconds; with many seats up to a few minutes.");
    InspectionRecord seen = withTrial(inspected(boat, file, given), file, given, conversation);
    Inspector.SavedInspection kept = inspector.save(seen, given.workspace());
    TodayVerdict today = TodayVerdict.of(kept.inspection());
    conversation.print("");
    conversation.print(TodayPage.opening(kept.inspection()));
    List<Answered> answers =
        TodayQuestions.of(today.points()).asked(conversation, kept.inspection().boat());
    String ending = today.held().isEmpty() ? TodayPage.ending(answers) : TodayPage.held(today);
    conversation.print("");
    conversation.print(ending.stripTrailing());
    keep(kept, answers, ending, given.workspace(), conversation);
    boolean open = !today.held().isEmpty() || answers.stream().anyMatch(a -> !a.yes());
    return (open ? Exit.HOLDS_BACK : Exit.NOTHING_HOLDS_BACK).status();
  }

  /** Adds a trial in the flooded boat, for a boat without other evidence. */
  private InspectionRecord withTrial(
      InspectionRecord inspection, Path file, CommandInput given, Conversation conversation) {
    Boat boat = inspection.boat();
    if (!KneeDeepTrial.isAskedOf(inspection)) {
      return inspection;
    }
    Optional<Boat> seen =
        new BriefConversation(conversation, Walk.ofTrial(inspector.today(), boat))
            .asked()
            .boat()
            .filter(b -> b.observedTrial().isPresent());
    if (seen.isEmpty()) {
      return inspection;
    }
    conversation.print("Working it out again, with what was seen.");
    InspectionRecord again = inspected(seen.get(), file, given);
    Workspace workspace = given.workspace();
    if (isKeptAt(workspace.boatPath(boat.name()), file)) {
      saved(BoatFile.read(file), boat, seen.get(), workspace, conversation);
    }
    return again;
  }

  /**
   * Saves the answers in the units of the file, whichever were asked for here; never for a boat
   * that nobody saw.
   */
  private static void saved(
      Boat kept, Boat asked, Boat seen, Workspace workspace, Conversation conversation) {
    if (!kept.in(asked.units()).equals(asked)) {
      conversation.print(
          "The boat file was changed meanwhile, so what was seen stands in the record alone.");
      return;
    }
    workspace.saveBoat(kept.withObservedTrial(seen.observedTrial()));
  }

  private static boolean isKeptAt(Path kept, Path file) {
    return kept.toAbsolutePath().normalize().equals(file.toAbsolutePath().normalize());
  }

  private InspectionRecord inspected(Boat boat, Path file, CommandInput given) {
    return BoatChoice.consistent(
        file, () -> inspector.inspect(boat, Optional.empty(), RuleBooks.of(given)));
  }

  private static void keep(
      Inspector.SavedInspection kept,
      List<Answered> answers,
      String ending,
      Workspace workspace,
      Conversation conversation) {
    var inspection = kept.inspection();
    Path file =
        workspace.saveToday(
            inspection.boat().name(),
            inspection.date(),
            TodayPage.savedText(inspection, answers, ending));
    conversation.print("");
    kept.warnings()
        .forEach(warning -> conversation.print(InspectionOutput.NOTE + PrintableText.of(warning)));
    conversation.print("Record:  " + PrintableText.of(kept.path().toString()));
    conversation.print("Answers: " + PrintableText.of(file.toString()));
  }

  /** The points of today, each a question as in the walk. Every answer but yes leaves it open. */
  record TodayQuestions(List<Point> points, List<QuestionDefinition<Boolean>> entries) {
    private static final String UNKNOWN = "don't know";
    private static final String NOT_ONE = " is not one of them. Type yes, no or don't know.";

    static TodayQuestions of(List<Point> points) {
      return new TodayQuestions(
          points, IntStream.range(0, points.size()).mapToObj(i -> entry(i, points)).toList());
    }

    /** Every answer; a point that nobody reached has none and is open. */
    List<Answered> asked(Conversation conversation, Boat boat) {
      List<Answer> answers =
          new BriefConversation(conversation, Walk.asking(boat, List.copyOf(entries)))
              .asked()
              .answers();
      return IntStream.range(0, points.size()).mapToObj(i -> answered(i, answers)).toList();
    }

    private static QuestionDefinition<Boolean> entry(int i, List<Point> points) {
      Point point = points.get(i);
      String[] question =
          TodayPage.question(i + 1, points.size(), point).lines().toArray(String[]::new);
      return QuestionDefinition.of(
              "today." + (i + 1),
              point.name(),
              "yes, no, " + UNKNOWN,
              "yes, no or " + UNKNOWN,
              TodayQuestions::read)
          .choices(List.of("yes", "no", UNKNOWN))
          .how(question)
          .why(LineWrap.lines(TodayPage.why(point), "", "", TextForm.WIDTH).toArray(String[]::new))
          .orElse(false, UNKNOWN);
    }

    private static Reading<Boolean> read(String typed) {
      return YesOrNo.read(typed)
          .refusal()
          .map(no -> Reading.<Boolean>refused(PrintableText.excerpt(typed) + NOT_ONE))
          .orElseGet(() -> YesOrNo.read(typed));
    }

    private Answered answered(int i, List<Answer> answers) {
      QuestionDefinition<Boolean> entry = entries.get(i);
      return answers.stream()
          .filter(answer -> answer.question().equals(entry.key()))
          .flatMap(answer -> understood(entry, answer).stream())
          .findFirst()
          .map(said -> new Answered(points.get(i), said.value(), said.text()))
          .orElseGet(() -> new Answered(points.get(i), false, "not answered"));
    }

    private static Optional<Reading.Understood<Boolean>> understood(
        QuestionDefinition<Boolean> entry, Answer answer) {
      return entry.read(answer.typed()) instanceof Reading.Understood<Boolean> said
          ? Optional.of(said)
          : Optional.empty();
    }
  }
}
