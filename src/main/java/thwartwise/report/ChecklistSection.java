package thwartwise.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import thwartwise.boat.Boat;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.record.InspectionRecord;

/**
 * What was found when somebody looked the boat over, system by system. Faults stand in full,
 * everything else as a count; what nobody looked at is always named.
 */
final class ChecklistSection {
  private static final String NOTHING =
      "No system of this boat was looked at by hand and eye; \"look\" goes through them";

  private ChecklistSection() {}

  static void write(Page page, InspectionRecord inspection) {
    Boat boat = inspection.boat();
    if (boat.pointAnswers().isEmpty()) {
      page.paragraph(NOTHING);
      return;
    }
    LocalDate day = inspection.date().toLocalDate();
    bad(page, boat);
    page.paragraph(
        bySystem(boat).entrySet().stream()
            .map(e -> e.getKey() + ": " + counts(e.getValue(), boat, day))
            .collect(Collectors.joining("; ")));
  }

  private static void bad(Page page, Boat boat) {
    Map<String, List<PointAnswer>> looks = new LinkedHashMap<>();
    boat.pointAnswers().stream()
        .filter(PointAnswer::isFault)
        .forEach(a -> looks.computeIfAbsent(found(a), f -> new ArrayList<>()).add(a));
    looks.forEach(
        (look, answers) -> {
          page.paragraph(look);
          answers.forEach(a -> page.point(Sentence.capital(ChecklistWords.of(a)), must(a)));
        });
  }

  private static String found(PointAnswer answer) {
    return "Not as it should be, found by " + answer.by() + " on " + answer.date();
  }

  private static String must(PointAnswer answer) {
    return Sentence.capital(answer.gravity().word())
        + (answer.note().isBlank() ? "" : ": " + answer.requirement());
  }

  private static Map<String, List<PointAnswer>> bySystem(Boat boat) {
    Map<String, List<PointAnswer>> systems = new LinkedHashMap<>();
    boat.pointAnswers()
        .forEach(a -> systems.computeIfAbsent(a.system(), s -> new ArrayList<>()).add(a));
    return systems;
  }

  // A look that is too old, or at a thing that was changed since, does not count.
  private static String counts(List<PointAnswer> answers, Boat boat, LocalDate day) {
    long open = answers.stream().filter(a -> a.isDue(boat, day)).count();
    long bad = answers.stream().filter(PointAnswer::isFault).count();
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
