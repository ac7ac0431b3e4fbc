package thwartwise.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import thwartwise.boat.Boat;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointCondition;
import thwartwise.boat.PointGravity;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Note;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.record.InspectionRecord;

/**
 * What was found when somebody looked the boat over, system by system. What is not as it should be
 * stands in full, everything else as a count; what nobody looked at is always said.
 */
final class LookedAtSection {
  private static final String NOTHING =
      "No system of this boat was looked at by hand and eye; \"look\" goes through them";

  private LookedAtSection() {}

  static void write(Page page, InspectionRecord inspection) {
    Boat boat = inspection.boat();
    if (boat.pointAnswers().isEmpty()) {
      page.paragraph(NOTHING);
      return;
    }
    LocalDate day = inspection.date().toLocalDate();
    boat.pointAnswers().stream()
        .filter(PointAnswer::isBad)
        .forEach(a -> page.point(bad(a), "Found by " + a.by() + " on " + a.date(), a.note()));
    page.paragraph(
        bySystem(boat).entrySet().stream()
            .map(e -> e.getKey() + ": " + counts(e.getValue(), boat, day))
            .collect(Collectors.joining("; ")));
  }

  /** What must be put right before anybody goes, gravest first. */
  static List<String> first(InspectionRecord inspection) {
    List<PointAnswer> grave = new ArrayList<>(inspection.boat().pointAnswers());
    grave.removeIf(a -> !a.isGrave());
    grave.sort(java.util.Comparator.comparing(PointAnswer::gravity));
    List<String> words = new ArrayList<>();
    grave.forEach(a -> words.add("Put right: " + a.mustOfThing()));
    inspection.report().findings().stream()
        .filter(LookedAtSection::isElectrical)
        .forEach(f -> words.add("Put right (wiring): " + must(f)));
    return words;
  }

  /** What must be so, and what is wrong where that does not say it. */
  static String must(Finding finding) {
    String note = circuit(finding.note());
    return CheckWords.of(finding.question()) + (note.isEmpty() ? "" : ": " + note);
  }

  private static String circuit(Note note) {
    return note instanceof Note.UnguardedCircuit wrong ? WiringFaultWords.brief(wrong.fault()) : "";
  }

  private static boolean isElectrical(Finding finding) {
    CheckId check = finding.question().check();
    return !check.hasFigure() && check != CheckId.LOOKED_AT;
  }

  private static String bad(PointAnswer answer) {
    String grave =
        answer.gravity() == PointGravity.ADVICE ? "" : " (" + answer.gravity().word() + ")";
    return "Not as it should be" + grave + ": " + answer.mustOfThing();
  }

  private static Map<String, List<PointAnswer>> bySystem(Boat boat) {
    Map<String, List<PointAnswer>> systems = new LinkedHashMap<>();
    boat.pointAnswers()
        .forEach(a -> systems.computeIfAbsent(a.system(), s -> new ArrayList<>()).add(a));
    return systems;
  }

  // A look too long ago, or at a thing that was changed since, is none.
  private static String counts(List<PointAnswer> answers, Boat boat, LocalDate day) {
    long open = answers.stream().filter(a -> a.isDue(boat, day)).count();
    long bad = answers.stream().filter(PointAnswer::isBad).count();
    long good =
        answers.stream()
            .filter(a -> !a.isDue(boat, day))
            .filter(a -> a.condition() == PointCondition.AS_IT_SHOULD_BE)
            .count();
    List<String> words = new ArrayList<>();
    count(words, good, PointCondition.AS_IT_SHOULD_BE);
    count(words, bad, PointCondition.NOT_AS_IT_SHOULD_BE);
    count(words, open, PointCondition.NOT_LOOKED_AT);
    count(words, answers.size() - good - bad - open, PointCondition.DOES_NOT_APPLY);
    return Sentence.list(words);
  }

  private static void count(List<String> words, long points, PointCondition condition) {
    if (points > 0) {
      words.add(points + " " + condition.word());
    }
  }
}
