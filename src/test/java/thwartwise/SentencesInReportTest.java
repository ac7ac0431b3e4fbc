package thwartwise;

import static org.assertj.core.api.Assertions.assertThat;

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
          "passage",
          "plausibility",
          "proof",
          "record",
          "remedy",
          "rules",
          "spread",
          "uncertainty");

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
