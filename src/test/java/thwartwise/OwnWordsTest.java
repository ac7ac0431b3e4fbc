package thwartwise;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Nothing from the boat file to the page takes apart, searches or compares a sentence that the
 * program wrote itself: a reworded sentence or a comma in a name would change what is concluded.
 */
class OwnWordsTest {
  private static final List<String> ROOMS =
      List.of(
          "checks",
          "loadcase",
          "crew",
          "advice",
          "inspection",
          "record",
          "remedy",
          "report",
          "today",
          "plausibility",
          "picture",
          "walk",
          "files.boat");

  /** What somebody typed, quoting, grammar and layout; each with what its text is. */
  private static final Set<String> TYPED =
      Set.of(
          "thwartwise.record.BoatRecords", // the name of a file
          "thwartwise.report.OpeningWords", // an article for what somebody called an opening
          "thwartwise.report.FleetCsv", // quoting of a cell
          "thwartwise.report.HtmlPage", // the number of a record in an address
          "thwartwise.picture.MomentCurve", // zeros of a figure
          "thwartwise.plausibility.DoubtId", // the key of a doubt in a boat file
          "thwartwise.plausibility.PlaceDoubts", // names somebody gave a seat and its box
          "thwartwise.plausibility.SeatDoubts",
          "thwartwise.plausibility.UsualKit", // what somebody called a piece of kit
          "thwartwise.report.MarginWords", // whether a figure is shown as one
          "thwartwise.walk.Walk", // a line somebody typed
          "thwartwise.walk.TypedRow", // the same, and the key of a question
          "thwartwise.walk.TypedTable",
          "thwartwise.walk.engine.Entry",
          "thwartwise.walk.engine.Tape",
          "thwartwise.walk.engine.WordQuestions",
          "thwartwise.walk.engine.Question", // layout: a mark of question, where a line breaks
          "thwartwise.walk.questions.Ages",
          "thwartwise.walk.questions.HullQuestions", // two thicknesses with ; between
          "thwartwise.walk.questions.KitQuestions", // what somebody called a piece of kit
          "thwartwise.walk.questions.BoatSummary", // layout: where a line breaks
          "thwartwise.walk.questions.Sketches", // layout: lines of a drawing
          "thwartwise.walk.stations.LineWords", // a table that was typed or pasted
          "thwartwise.walk.stations.StationRows",
          "thwartwise.walk.stations.StationTable",
          "thwartwise.walk.stations.TableRow",
          "thwartwise.walk.stations.TableUnit",
          "thwartwise.files.boat.PropulsionCodec"); // a word of the boat file

  private static final DescribedPredicate<JavaCall<?>> SEARCHES_TEXT =
      target(owner(DescribedPredicate.describe("String", c -> c.isEquivalentTo(String.class))))
          .and(
              target(
                  nameMatching(
                      "split|startsWith|endsWith|contains|indexOf|lastIndexOf|matches|replaceFirst"
                          + "|replaceAll|regionMatches|equalsIgnoreCase|hashCode")))
          .as("search a text, or switch on one");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("thwartwise");

  private static ArchRule rule(Set<String> besides) {
    String[] packages = ROOMS.stream().map(r -> "thwartwise." + r + "..").toArray(String[]::new);
    DescribedPredicate<JavaClass> asked =
        DescribedPredicate.describe(
            "not excepted", c -> !besides.contains(c.getName().replaceFirst("\\$.*", "")));
    return noClasses()
        .that(resideInAnyPackage(packages).and(asked))
        .should()
        .callMethodWhere(SEARCHES_TEXT);
  }

  @Test
  void no_text_is_searched_or_switched_on() {
    rule(TYPED).check(CLASSES);
  }

  /** The rule sees what it forbids. */
  @Test
  void the_exceptions_are_needed() {
    assertThatThrownBy(() -> rule(Set.of()).check(CLASSES)).hasMessageContaining("OpeningWords");
  }

  private static final Pattern LITERAL = Pattern.compile("\\.equals\\(\"[^\"]|\"\\.equals\\(");

  @Test
  void no_text_is_compared_with_a_literal() throws IOException {
    Set<String> found = new TreeSet<>();
    for (String room : ROOMS) {
      try (Stream<Path> files =
          Files.walk(Path.of("src/main/java/thwartwise", room.replace('.', '/')))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          Matcher compared = LITERAL.matcher(Files.readString(file));
          if (compared.find()) {
            found.add(file.getFileName().toString());
          }
        }
      }
    }
    assertThat(found)
        .containsOnly(
            "MarginWords.java",
            "UsualKit.java",
            "PeopleText.java", // typed: adult, boy
            "TypedTable.java", // the key of a question, and no as it was typed
            "TableRow.java", // what parts the cells of a line
            "WeighingQuestions.java", // the key of a question
            "ChamberCodec.java", // words of the boat file
            "PropulsionCodec.java");
  }
}
