package thwartwise.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.advice.Progress;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.JudgedBoat;
import thwartwise.inspection.Report;
import thwartwise.measure.Reading;
import thwartwise.measure.UnitFormat;
import thwartwise.record.Comparison;
import thwartwise.report.DeedWords;
import thwartwise.report.SupposePage;
import thwartwise.rules.RuleBook;
import thwartwise.supposition.SupposedBoat;
import thwartwise.supposition.Supposition;
import thwartwise.supposition.SuppositionText;

/** Tries a change on a boat and saves nothing of it. */
final class SupposeCommand implements ShellCommand {

  private static final int MOST_WORDS = 200;

  private final Inspector inspector;

  SupposeCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "suppose";
  }

  @Override
  public String getDescription() {
    return "try a change on a boat without keeping anything";
  }

  @Override
  public Optional<String> argument() {
    return Optional.of("WHAT");
  }

  @Override
  public int mostArguments() {
    return MOST_WORDS;
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.BOAT, OptionWord.RULES, UnitsChoice.UNITS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Works out the boat as it is and with the change, and tells the difference in
        a few lines. No boat file, record or draft is touched. What can be tried:
          battery at 1.2 m                along the boat from the aft end, at the
          battery at the stern bench      height and as far to the side as it was
          without the solar panel
          30 litres of foam under the stern bench, in the bow, in the stern
          two adults and a girl of 10     seated where "seats" puts them, instead of
          Iris 62 kg and boy 12           those of the boat file
        Commas part several. Tab completes names of kit and places.

        Exit codes, for scripts:
          0  with the change nothing that limits the crew falls short, and all of
             the people named may go
          1  something does, or not all of them may
          2  the file or the words cannot be used
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Path file = BoatChoice.of(given, this);
    Boat boat = UnitsChoice.of(BoatFile.read(file), given, this);
    RuleBook book = RuleBooks.of(given);
    List<Supposition> supposed = understood(read(boat, typed(context)));
    Tried tried = understood(tried(file, boat, book, supposed));
    context.outputWriter().println(tried.page().stripTrailing());
    return tried.exit().status();
  }

  private static String typed(CommandContext context) {
    return context.parsedInput().arguments().stream()
        .map(CommandArgument::value)
        .collect(Collectors.joining(" "));
  }

  private static Reading<List<Supposition>> read(Boat boat, String typed) {
    return new SuppositionText(boat, PlannedMasses.of(RuleSetFile.cautiousDefault())).read(typed);
  }

  private <T> T understood(Reading<T> reading) {
    if (reading instanceof Reading.Understood<T> understood) {
      return understood.value();
    }
    throw UsageError.refused(this, reading.refusal().orElseThrow());
  }

  /** The answer, and its exit code. */
  private record Tried(String page, Exit exit) {}

  private Reading<Tried> tried(Path file, Boat boat, RuleBook book, List<Supposition> supposed) {
    return BoatChoice.consistent(
        file,
        () -> InterruptibleWork.of("Trying it", progress -> tried(boat, book, supposed, progress)));
  }

  private Reading<Tried> tried(
      Boat boat, RuleBook book, List<Supposition> supposed, Progress progress) {
    JudgedBoats judged = new JudgedBoats();
    Function<BoatModel, JudgedBoat> changed =
        model -> judged.of(model.boat(), () -> inspector.judged(model, book, progress));
    Supplier<JudgedBoat> unchanged =
        () -> judged.of(boat, () -> inspector.judged(boat, book, progress));
    return SupposedBoat.of(
            boat,
            supposed,
            (fitted, people) -> changed.apply(fitted).seats(people),
            inspector.today())
        .as(
            after -> {
              Report with = changed.apply(after.model()).report();
              Report asItIs = inspector.report(boat, book, () -> unchanged.get().report());
              return tried(boat, asItIs, after, with);
            });
  }

  private Tried tried(Boat boat, Report asItIs, SupposedBoat after, Report with) {
    Comparison comparison =
        Comparison.of(
            inspector.unsavedRecord(boat, asItIs), inspector.unsavedRecord(after.boat(), with));
    UnitFormat units = new UnitFormat(boat.units());
    String page =
        SupposePage.of(
            comparison,
            after.deeds().stream()
                .map(change -> DeedWords.of(change.deed(), units).deed())
                .toList(),
            after.crew());
    boolean all = after.crew().map(crew -> crew.allMayGo()).orElse(true);
    return new Tried(page, all ? Exit.of(comparison.after().report()) : Exit.HOLDS_BACK);
  }

  /**
   * The next word of a name that was begun; otherwise the beginnings of names and of the grammar.
   */
  @Override
  public List<String> proposals(List<String> before, Workspace workspace) {
    List<List<String>> names = workspace.boats().stream().flatMap(SupposeCommand::names).toList();
    List<String> next = names.stream().flatMap(name -> next(name, before).stream()).toList();
    Stream<String> first =
        Stream.concat(names.stream().map(name -> name.get(0)), SuppositionText.WORDS.stream());
    return (next.isEmpty() ? first : next.stream()).distinct().toList();
  }

  private static Stream<List<String>> names(Boat boat) {
    return Stream.concat(
            boat.kit().stream().map(Kit::name), boat.places().stream().map(Place::name))
        .map(name -> List.of(name.split("\\s+")));
  }

  /** The word that follows where the line ends with the beginning of a name. */
  private static Optional<String> next(List<String> name, List<String> before) {
    for (int n = Math.min(name.size() - 1, before.size()); n > 0; n--) {
      if (before.subList(before.size() - n, before.size()).equals(name.subList(0, n))) {
        return Optional.of(name.get(n));
      }
    }
    return Optional.empty();
  }
}
