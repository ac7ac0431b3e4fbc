package thwartwise.shell;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jline.reader.EndOfFileException;
import org.jline.reader.UserInterruptException;
import thwartwise.advice.Progress;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Person;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.CrewSeating;
import thwartwise.crew.Lazy;
import thwartwise.crew.NamedPerson;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.InspectionProgress;
import thwartwise.inspection.JudgedBoat;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import thwartwise.record.Paper;
import thwartwise.report.CardPage;
import thwartwise.report.RecordPapers;
import thwartwise.report.TextPage;
import thwartwise.rules.RuleBook;

/** The whole shell in memory, with a clock that stands and answers typed beforehand. */
final class TestShell {
  static final Clock NOON = Clock.fixed(Instant.parse("2026-06-01T12:00:00Z"), ZoneOffset.UTC);
  static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

  /** Typed like a line, it stands for the keys. */
  static final String CTRL_C = "\u0003";

  /** An inspection made up for a test, which says nothing on the way. */
  interface QuickRun {
    Report of(Boat boat, RuleBook rules, LocalDate today);

    private Inspector.Run unheard() {
      return new ByScreen((boat, rules, today, progress) -> of(boat, rules, today), boat -> {});
    }
  }

  /** Crews judged by the search alone: moving every measurement takes the longest of all. */
  private record ByScreen(Inspector.Run run, Consumer<Boat> judged) implements Inspector.Run {
    @Override
    public Report of(Boat boat, RuleBook rules, LocalDate today, InspectionProgress progress) {
      return run.of(boat, rules, today, progress);
    }

    @Override
    public JudgedBoat judged(Boat boat, RuleBook rules, LocalDate today, Progress progress) {
      return new ScreenedBoat(boat, rules, today, judged);
    }

    @Override
    public JudgedBoat judged(
        BoatModel changed, RuleBook rules, LocalDate today, Progress progress) {
      return new ScreenedBoat(changed.boat(), rules, today, judged);
    }
  }

  /**
   * @param judged is called with the boat
   */
  private record ScreenedBoat(Boat boat, RuleBook rules, LocalDate today, Consumer<Boat> judged)
      implements JudgedBoat {
    ScreenedBoat {
      judged.accept(boat);
    }

    @Override
    public Report report() {
      return TestShell.inspected(boat, rules, today);
    }

    @Override
    public JudgedBoat withAboard(List<Person> people) {
      return new ScreenedBoat(boat.withAboard(people), rules, today, judged);
    }

    @Override
    public CrewAnswer seats(List<NamedPerson> members) {
      return CrewSeating.of(BoatModel.of(boat, today), rules, members);
    }
  }

  private static final Map<List<Object>, Supplier<Report>> INSPECTED = new ConcurrentHashMap<>();

  /** Without advice, and once for all tests that ask for the same. */
  private static Report inspected(Boat boat, RuleBook rules, LocalDate today) {
    return INSPECTED
        .computeIfAbsent(
            List.of(boat, rules, today),
            same -> Lazy.of(() -> Inspection.withoutAdvice(boat, rules, today)))
        .get();
  }

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final Queue<String> answers = new ArrayDeque<>();
  private final CommandRunner runner;
  private final CommandRunner atPrompt;
  private Runnable beforeAnswer = () -> {};
  private boolean piped;

  private TestShell(Inspector.Run inspection, Inspector.Papers papers) {
    Commands commands = Commands.of(inspector(inspection, papers));
    PrintWriter results = new PrintWriter(out);
    this.runner = commands.runner(results, new PrintWriter(err), lines());
    this.atPrompt =
        commands.runner(results, results, lines(), Optional.empty(), TerminalLines::fitted);
  }

  private static Inspector inspector(Inspector.Run inspection, Inspector.Papers papers) {
    return new Inspector(inspection, papers, NOON, new ProgramVersion("0.0.1-test"));
  }

  /** Without the PDFs and the pictures, which have tests of their own and take the longest. */
  private static List<Paper> papers(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    return List.of(
        Paper.text(RecordPapers.TEXT, TextPage.of(inspection, number, corrects)),
        Paper.text(RecordPapers.CARD + RecordPapers.TEXT, CardPage.text(inspection, number)));
  }

  static TestShell open() {
    return new TestShell(new ByScreen(Inspection::of, boat -> {}), TestShell::papers);
  }

  /**
   * @param judged hears of every boat whose crews are judged
   */
  static TestShell hearing(Consumer<Boat> judged) {
    return new TestShell(new ByScreen(Inspection::of, judged), TestShell::papers);
  }

  /** As whoever starts the program has it: crews are judged by the spread of what was measured. */
  static TestShell judged() {
    return new TestShell(Inspection::of, TestShell::papers);
  }

  /** The same without advice, which takes the longest, for tests that look at anything else. */
  static TestShell withoutAdvice() {
    return whoseInspection(TestShell::inspected);
  }

  static TestShell whoseInspection(QuickRun inspection) {
    return new TestShell(inspection.unheard(), TestShell::papers);
  }

  /** The same with every page that the program makes. */
  static TestShell withAllPapers(QuickRun inspection) {
    return new TestShell(inspection.unheard(), RecordPapers::of);
  }

  /** Lines for whoever asks; when they run out, the input has ended. */
  TestShell typing(String... lines) {
    answers.addAll(Arrays.asList(lines));
    return this;
  }

  /** The lines come from a pipe: nobody reads a question before its answer. */
  TestShell piped() {
    piped = true;
    return this;
  }

  /** Looks at the world each time a question stands and nothing is typed yet. */
  TestShell beforeEachAnswer(Runnable look) {
    beforeAnswer = look;
    return this;
  }

  /** The interactive shell; errors go where the results go. */
  void openPrompt() {
    new Prompt(lines(), new PrintWriter(out), atPrompt, new ProgramVersion("9.9"))
        .run(new String[0]);
  }

  int run(String... words) {
    return runner.run(List.of(words));
  }

  String out() {
    return out.toString().replace("\r\n", "\n");
  }

  String err() {
    return err.toString().replace("\r\n", "\n");
  }

  private LineSource lines() {
    return new LineSource() {
      @Override
      public String readInput(String prompt) {
        return nextLine(prompt);
      }

      @Override
      public boolean isTerminal() {
        return !piped;
      }
    };
  }

  private String nextLine(String prompt) {
    out.write(prompt);
    beforeAnswer.run();
    if (answers.isEmpty()) {
      throw new EndOfFileException();
    }
    if (answers.peek().equals(CTRL_C)) {
      throw new UserInterruptException(answers.remove());
    }
    out.write(answers.peek() + "\n");
    return answers.remove();
  }
}
