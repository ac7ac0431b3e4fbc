package thwartwise.shell;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.boat.Boat;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.Reading;
import thwartwise.measure.UnitSystem;
import thwartwise.report.SeatsPage;
import thwartwise.rules.RuleBook;
import thwartwise.walk.questions.PeopleText;

/** Prints who of some people may go in a boat, and where each of them sits. */
final class SeatsCommand implements ShellCommand {
  static final OptionWord PEOPLE =
      new OptionWord("people", "LIST", "who wants to come: \"Iris 62 kg, boy 12, adult\"", true);

  private final Inspector inspector;

  SeatsCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "seats";
  }

  @Override
  public String getDescription() {
    return "say who of some people may go, and who sits where";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.BOAT, PEOPLE, OptionWord.RULES, UnitsChoice.UNITS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Seats up to eight people where most is left of every limit that the boat
        sets to its crew. Nothing is kept. People are told apart by commas:
          Iris 62 kg     weighed without life jacket: 5 kg are added
          Tom 80 dressed weighed with everything on
          boy 12, girl 10  not weighed, 6 to 19 years old
          adult          not weighed

        Exit codes, for scripts:
          0  all of them may go, seated as told
          1  not all of them, or nobody
          2  the file or the list cannot be used
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Path file = BoatChoice.of(given, this);
    Boat boat = UnitsChoice.of(BoatFile.read(file), given, this);
    List<NamedPerson> members = members(given.text(PEOPLE).orElseThrow(), boat.units());
    CrewAnswer answer = answer(file, boat, RuleBooks.of(given), members);
    PrintWriter out = context.outputWriter();
    out.println(SeatsPage.of(boat, answer).stripTrailing());
    return (answer.allMayGo() ? Exit.NOTHING_HOLDS_BACK : Exit.HOLDS_BACK).status();
  }

  private List<NamedPerson> members(String typed, UnitSystem units) {
    PlannedMasses planned = PlannedMasses.of(RuleSetFile.cautiousDefault());
    Reading<List<NamedPerson>> read = PeopleText.forOneLine(planned, units).read(typed);
    if (read instanceof Reading.Understood<List<NamedPerson>> understood) {
      return understood.value();
    }
    throw UsageError.refused(this, read.refusal().orElseThrow());
  }

  private CrewAnswer answer(Path file, Boat boat, RuleBook book, List<NamedPerson> members) {
    return BoatChoice.consistent(
        file,
        () ->
            InterruptibleWork.of(
                "Trying who may sit where",
                progress -> inspector.judged(boat, book, progress).seats(members)));
  }
}
