package thwartwise.sampleboats;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.crew.Recommendation;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.report.LimitingFactorWords;
import thwartwise.report.RefusalWords;
import thwartwise.rules.CapacityFigure;

/**
 * Prints what each ordinary boat may carry, one row a boat, for comparing two states of the
 * program. Run by hand, with a folder if the boat files are wanted too.
 */
final class LimitsTable {
  private static final String HEAD =
      """
      | boat | adults of 95 kg | kg each, by number of people | crew kg | load kg | stays up | holds up | what governs | 33 CFR: people, kg of people, load | ISO style: people to one side, swamped |
      |---|---|---|---|---|---|---|---|---|---|
      """;

  private LimitsTable() {}

  public static void main(String[] args) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    List<Boat> boats = Stream.concat(OrdinaryBoats.all().stream(), PublishedBoats.all()).toList();
    if (args.length > 0) {
      write(boats, Path.of(args[0]));
    }
    out.print(HEAD);
    for (Boat boat : boats) {
      out.println(
          row(Inspection.withoutAdvice(boat, RuleSetFile.bundledRuleBook(), OrdinaryBoats.TODAY)));
    }
  }

  private static void write(List<Boat> boats, Path folder) throws IOException {
    Files.createDirectories(folder);
    for (Boat boat : boats) {
      String file = boat.name().replaceAll("[^0-9A-Za-z]+", "-") + ".json";
      Files.writeString(folder.resolve(file), BoatFile.write(boat));
    }
  }

  static String row(Report report) {
    Recommendation r = report.recommendation();
    String each =
        r.crewLimits().stream()
            .map(l -> String.format(Locale.ROOT, "%d × %.0f", l.people(), l.massLimit()))
            .collect(Collectors.joining(", "));
    return String.format(
        Locale.ROOT,
        "| %s | %d | %s | %.0f | %.0f | %d | %d | %s | %s | %s |",
        report.boat(),
        r.people(),
        each,
        r.crew(),
        r.load(),
        r.staysUpWith(),
        r.holdsUpWhenSwamped(),
        r.withheld()
            ? "withheld: " + String.join("; ", RefusalWords.of(r.reasons(), UnitFormat.METRIC))
            : r.governedBy().map(LimitingFactorWords::of).orElse(""),
        figures(report, "33 CFR", f -> f.takesPart() && f.caps().isMass()),
        figures(report, "ISO", f -> f.persons().isPresent()));
  }

  private static String figures(
      Report report, String set, java.util.function.Predicate<CapacityFigure> wanted) {
    String shown =
        report.capacityFigures().stream()
            .filter(f -> f.ruleSet().contains(set))
            .filter(wanted)
            .map(LimitsTable::figure)
            .collect(Collectors.joining(", "));
    return shown.isEmpty() ? "does not apply" : shown;
  }

  private static String figure(CapacityFigure figure) {
    String persons = figure.persons().isPresent() ? figure.persons().getAsInt() + " people" : "";
    String mass =
        Double.isNaN(figure.mass())
            ? ""
            : String.format(
                Locale.ROOT, "%.0f kg %s", Math.floor(figure.mass()), figure.caps().word());
    return Stream.of(persons, mass).filter(s -> !s.isEmpty()).collect(Collectors.joining(" "));
  }
}
