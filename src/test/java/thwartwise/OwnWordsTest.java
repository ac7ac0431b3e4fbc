package thwartwise;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static thwartwise.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Nothing from the boat file to the page takes apart, searches or compares a sentence that the
 * program wrote itself: a reworded sentence or a comma in a name would change what is concluded.
 */
class OwnWordsTest {
  /** They know neither a boat nor a report: text as such is all they read and lay out. */
  private static final String[] OF_TEXT = {
    "thwartwise.measure..", "thwartwise.json..", "thwartwise.page.."
  };

  private static final Set<String> TYPED =
      names(
          """
          TrialQuestions AnswerGroup BalanceQuestions BatteryQuestions BoatChoice BoatRecords CellSeparator
          CommandInput ConditionReader DraftChoice AnswerReader EquipmentQuestions QuestionDefinition
          WalkCommands HullQuestions LabelFigure LimitQuestions PlanTerms
          LookConversation LookOffer Main MotorQuestions NameMatch OpeningQuestions PageCommand PanelQuestions
          InspectionOutput LineSource PeopleText PeoplePhrase RecordArchive EnteredRows AnswerCopy SheetCommand
          StationQuestions StationRows StationTable CarefulMeasurements SupposeCommand SuppositionText TableFigure
          TableRow
          TableUnit QuantityQuestions TerminalLines RowInput TableInput UnitsChoice Walk
          WalkConversation WireText WordQuestions CommandLineParser
          """);

  private static final Set<String> NAMES =
      names(
          """
          ExcludedUse Kit KitQuestions NameRules NamedEnd NamedSide
          OpeningWords PlacePlausibility PlaceQuestions SeatPlausibility UsualKit
          """);

  private static final Set<String> FILES =
      names(
          """
          BoatQuantity BoatsList ChainText PlausibilityFinding FleetFolder PageFile ItemFingerprint MethodQuestions
          RecordFile SealedText SheetSections SheetTemplate SheetTopic Slug
          StoreReading StoredInspection FileTransaction
          """);

  private static final Set<String> OLD =
      names(
          """
          OldLoadCases OldQuestions OldWaters
          """);

  private static final Set<String> MACHINE =
      names(
          """
          Failure Pager ProgressLine Terminals WriteFault
          """);

  private static final Set<String> LAYOUT =
      names(
          """
          BoatSummary FleetCsv HtmlPage Question Sketches
          """);

  /** By what their text is. */
  private static final Map<String, Set<String>> NOT_OUR_WORDS =
      Map.of(
          "a line that was typed, or pasted", TYPED,
          "what somebody called a boat, a place, a thing", NAMES,
          "names of files and their layout, keys and words of formats", FILES,
          "reports of version 1, which had words alone", OLD,
          "the machine, its terminal and its faults", MACHINE,
          "layout: where a line breaks, a mark at its end, signs of a figure", LAYOUT);

  private static final DescribedPredicate<JavaAccess<?>> SEARCHES_TEXT =
      target(
              owner(
                  describe(
                      "text",
                      c -> c.isEquivalentTo(String.class) || c.isEquivalentTo(Pattern.class))))
          .and(
              target(
                  nameMatching(
                      "matcher|asPredicate|asMatchPredicate|split|startsWith|endsWith|contains|indexOf|lastIndexOf|matches|replaceFirst"
                          + "|replaceAll|regionMatches|equalsIgnoreCase|hashCode")))
          .as("search a text, or switch on one");

  private static final JavaClasses CLASSES = ProgramClasses.ALL;

  @Test
  void only_what_is_not_our_own_words_is_searched_or_switched_on() {
    Set<String> searching =
        CLASSES.stream()
            .filter(resideOutsideOfPackages(OF_TEXT))
            .filter(c -> c.getAccessesFromSelf().stream().anyMatch(SEARCHES_TEXT))
            .map(OwnWordsTest::outermost)
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(searching).containsExactlyInAnyOrderElementsOf(notOurWords());
  }

  private static Set<String> names(String list) {
    return Set.of(list.strip().split("\\s+"));
  }

  private static List<String> notOurWords() {
    return NOT_OUR_WORDS.values().stream().flatMap(Set::stream).sorted().toList();
  }

  private static String outermost(JavaClass type) {
    return type.getEnclosingClass().map(OwnWordsTest::outermost).orElse(type.getSimpleName());
  }

  private static final Pattern LITERAL = Pattern.compile("\\.equals\\(\"[^\"]|\"\\.equals\\(");

  @Test
  void no_text_is_compared_with_a_literal() throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/thwartwise"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        Matcher compared = LITERAL.matcher(Files.readString(file));
        if (compared.find()) {
          found.add(file.getFileName().toString());
        }
      }
    }
    notOurWords().forEach(name -> found.remove(name + ".java"));
    assertThat(found)
        .containsExactlyInAnyOrder(
            "Lettering.java", // attributes of a drawing
            "MarginWords.java",
            "MeasuringSheet.java", // the kind of a section
            "OptionWord.java",
            "Prompt.java", // typed: exit
            "SvgShapes.java", // elements and attributes of a drawing
            "WeighingQuestions.java"); // the key of a question
  }
}
