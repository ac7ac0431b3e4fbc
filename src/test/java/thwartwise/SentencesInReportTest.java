package thwartwise;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What is found out about a boat has a type, and {@code report} makes the sentence of it: below
 * {@code report} stand no sentences but those named here, each for its reason. Messages for bad
 * input stay where they are thrown.
 */
class SentencesInReportTest {
  private static final List<String> BELOW_REPORT =
      List.of(
          "advice",
          "afloat",
          "boat",
          "checklist",
          "checks",
          "crew",
          "electrics",
          "geometry",
          "hull",
          "inspection",
          "loadcase",
          "measure",
          "measured",
          "passage",
          "plausibility",
          "proof",
          "record",
          "remedy",
          "rules",
          "spread",
          "uncertainty");

  /** Every other package, and why it has words of its own. */
  private static final Map<String, String> WITH_WORDS =
      Map.ofEntries(
          Map.entry("report", "makes the sentences"),
          Map.entry("page", "says what a form of the page leaves out"),
          Map.entry("picture", "letters its drawings"),
          Map.entry("today", "asks its ten questions with the words of the report"),
          Map.entry("walk", "asks"),
          Map.entry("sheet", "asks on paper"),
          Map.entry("supposition", "refuses what is typed"),
          Map.entry("shell", "commands and their help"),
          Map.entry("files", "refuses what stands in a file"),
          Map.entry("json", "refuses what stands in a file"),
          Map.entry("archive", "refuses what lies in the folder"));

  private static final Map<String, String> WITH_SENTENCES =
      Map.ofEntries(
          // Messages for bad input, made in one place and thrown in another.
          Map.entry("PlacementChecks", "what to measure again"),
          Map.entry("ChainFault", "what happened to a file"),
          Map.entry("PaperFault", "what happened to a file"),
          // Words of a choice, as files and lists have them.
          Map.entry("Beaufort", "what the wind looks like, as every table of Beaufort has it"),
          Map.entry("CrewWhenSwamped", "a word of the boat file"),
          Map.entry("Outfit", "a word of the boat file"),
          Map.entry("PointAnswer", "a word of the boat file"),
          Map.entry("CapKind", "a word of the report"),
          Map.entry("Concern", "a word of the checklist"),
          Map.entry("Checklist", "a word of the checklist"),
          Map.entry("Unit", "a symbol"),
          Map.entry("MeasuringWay", "a word of the boat file"),
          Map.entry("Role", "a word of the report"),
          Map.entry("CapacityFigure", "a word of the report"),
          Map.entry("Pose", "a word of the report"),
          Map.entry("UsualKit", "names of kit, to be recognized"),
          // The table of values, and the reading of what people type.
          Map.entry("BoatProperties", "question, help and remedy of each value"),
          Map.entry("ElectricalProperties", "question, help and remedy of each value"),
          Map.entry("OutfitProperties", "question, help and remedy of each value"),
          Map.entry("PartProperties", "question, help and remedy of each value"),
          Map.entry("WireProperties", "question, help and remedy of each value"),
          Map.entry("BoatQuantity", "what is not believed, and the range"),
          Map.entry("UnitSlip", "a unit"),
          Map.entry("ValueType", "what a file may hold"),
          Map.entry("ChoiceReader", "refuses what is typed"),
          Map.entry("DayReader", "refuses what is typed"),
          Map.entry("FeetInchesEighths", "refuses what is typed"),
          Map.entry("NameReader", "refuses what is typed"),
          Map.entry("NumberReader", "refuses what is typed"),
          Map.entry("QuantityReader", "refuses what is typed"),
          Map.entry("WrittenNumber", "refuses what is typed"),
          Map.entry("YesOrNo", "refuses what is typed"),
          Map.entry("NegativeAnswer", "words that people type"),
          Map.entry("UnknownAnswer", "words that people type"),
          Map.entry("RoundBounds", "the range in a refusal"),
          Map.entry("Rounding", "a figure that is not known"),
          Map.entry("UnitFormat", "a unit"),
          Map.entry("UnitSystem", "a choice of units, with examples"),
          // Names of rules, and what a rule set must state for them.
          Map.entry("Formulas", "names of formulas"),
          Map.entry("Cfr183Loading", "names of formulas"),
          Map.entry("Cfr183Flotation", "names of formulas"),
          Map.entry("Cfr183Power", "a parameter"),
          Map.entry("FreeboardWithCrew", "a parameter"),
          Map.entry("IronTest", "a parameter"),
          Map.entry("LengthBeamDepth", "a parameter"),
          Map.entry("PersonsByLength", "a parameter"),
          Map.entry("StatedCaps", "a parameter"),
          Map.entry("LoadTestRules", "names of formulas"),
          // Sources: who says so, as rule sets state it of their figures.
          Map.entry("SuddenShift", "a source"),
          Map.entry("ChamberVolumeComparison", "a source"),
          Map.entry("ElectricalFindings", "a source"),
          Map.entry("OutfitFindings", "a source"),
          Map.entry("Plausibility", "a source"),
          Map.entry("ChamberPlausibility", "a source"),
          Map.entry("LifeJacket", "a source"),
          Map.entry("WaterAdjustedLimits", "a source"),
          Map.entry("NamedPerson", "the source of a mass"),
          Map.entry("AppliedRules", "the sources of a recommendation"),
          // Names of what has none of its own.
          Map.entry("Bay", "a name made of two names"),
          Map.entry("LineOut", "a name"),
          Map.entry("NamedEnd", "a name"),
          Map.entry("SeatPositions", "a name"),
          Map.entry("CrewSeating", "a name"),
          Map.entry("FoamFitting", "a name"),
          Map.entry("NamedChanges", "a name"),
          Map.entry("ChamberTesting", "a name"),
          Map.entry("BoatChanges", "names of what can differ between two boats"),
          Map.entry("PointQuestion", "why a question of no list is asked"),
          Map.entry("Distribution", "a parameter"));

  private static final Pattern COMMENT = Pattern.compile("(?s:/\\*.*?\\*/)|(?m:^\\s*//.*$)");
  private static final Pattern THROWN = Pattern.compile("throw |Exception\\(|UnusableBoat\\(");

  /** Three words one after another. */
  private static final Pattern SENTENCE =
      Pattern.compile(
          "\"(?:[^\"\\\\\n]|\\\\.)*[A-Za-z]+,? [a-z]+,? [a-z]+(?:[^\"\\\\\n]|\\\\.)*\"");

  @Test
  void below_report_stand_no_sentences_but_those_that_belong_there() {
    Set<String> found = new TreeSet<>();
    BELOW_REPORT.forEach(part -> found.addAll(withSentences(part)));
    assertThat(found).containsExactlyInAnyOrderElementsOf(WITH_SENTENCES.keySet());
  }

  @Test
  void every_package_is_below_report_or_has_its_reason() throws IOException {
    try (Stream<Path> parts = Files.list(Path.of("src/main/java/thwartwise"))) {
      assertThat(parts.map(part -> part.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(
              Stream.concat(BELOW_REPORT.stream(), WITH_WORDS.keySet().stream()).toList());
    }
  }

  private static Set<String> withSentences(String part) {
    Path folder = Path.of("src/main/java/thwartwise", part);
    try (Stream<Path> files = Files.walk(folder)) {
      Set<String> found = new TreeSet<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        if (hasSentence(Files.readString(file))) {
          found.add(file.getFileName().toString().replace(".java", ""));
        }
      }
      return found;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static boolean hasSentence(String source) {
    return Pattern.compile(";\\s*\n")
        .splitAsStream(COMMENT.matcher(source).replaceAll(""))
        .filter(statement -> !THROWN.matcher(statement).find())
        .anyMatch(statement -> SENTENCE.matcher(statement).find());
  }

  @Test
  void a_sentence_is_found_and_a_message_that_is_thrown_is_not() {
    assertThat(hasSentence("  String why = \"the boat is \" + size + \" long\";\n")).isTrue();
    assertThat(hasSentence("  String why = \"open\";\n  // the boat is long\n")).isFalse();
    assertThat(hasSentence("  // open\n  String why = \"the boat is long\";\n")).isTrue();
    assertThat(hasSentence("  throw new UnusableBoat(\"the boat is too long\");\n")).isFalse();
  }
}
