package thwartwise.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;

/**
 * A point of a checklist as a question about one thing of one boat.
 *
 * @param item the name of the chamber, opening or piece of kit; blank for the boat
 */
public record PointQuestion(String system, ChecklistPoint point, String item) {

  /**
   * All questions for a boat, system by system. A point is asked about each thing that it names. A
   * fault of a thing or point that is no longer there is asked about again, because another name
   * does not repair a chamber.
   */
  public static List<PointQuestion> of(List<Checklist> lists, Boat boat) {
    List<PointQuestion> all = new ArrayList<>();
    for (Checklist list : lists) {
      if (list.use().isAsked()) {
        list.askedOf(boat).stream()
            .flatMap(point -> questions(list, point, boat))
            .forEach(all::add);
      }
    }
    boat.pointAnswers().stream()
        .filter(PointAnswer::isFault)
        .filter(answer -> all.stream().noneMatch(q -> q.isAnsweredBy(answer)))
        .map(PointQuestion::stillBad)
        .forEach(all::add);
    return List.copyOf(all);
  }

  private static Stream<PointQuestion> questions(Checklist list, ChecklistPoint point, Boat boat) {
    List<String> names = point.concerns().names(boat);
    return (names.isEmpty() ? List.of("") : names)
        .stream().map(thing -> new PointQuestion(list.name(), point, thing));
  }

  private static PointQuestion stillBad(PointAnswer answer) {
    ChecklistPoint point =
        new ChecklistPoint(
            answer.point(),
            answer.requirement(),
            "",
            "it was found bad on " + answer.date() + " and nobody said since that it is put right",
            Concern.ANY_BOAT,
            answer.gravity(),
            answer.fact(),
            answer.repeatAfterDays());
    return new PointQuestion(answer.system(), point, answer.item());
  }

  public boolean isAnsweredBy(PointAnswer answer) {
    return answer.isOf(point.id(), item);
  }

  /** The answer, if there is one. */
  public Optional<PointAnswer> answerOf(Boat boat) {
    return boat.pointAnswers().stream().filter(this::isAnsweredBy).findFirst();
  }

  /** Whether the question needs an answer now. */
  public boolean isDue(Boat boat, LocalDate today) {
    return answerOf(boat).map(answer -> answer.isDue(boat, today)).orElse(true);
  }

  public PointAnswer answered(
      PointCondition condition, String note, String by, LocalDate today, Boat boat) {
    return new PointAnswer(
        point.id(),
        system,
        item,
        point.look(),
        condition,
        point.gravity(),
        point.fact(),
        point.repeatAfterDays(),
        note,
        by,
        today,
        PointAnswer.mark(boat, item));
  }

  /** The boat with this answer in the place of an earlier one. */
  public static Boat with(Boat boat, PointAnswer answer) {
    List<PointAnswer> all = new ArrayList<>(boat.pointAnswers());
    int there = -1;
    for (int i = 0; i < all.size(); i++) {
      there = all.get(i).isOf(answer.point(), answer.item()) ? i : there;
    }
    if (there < 0) {
      all.add(answer);
    } else {
      all.set(there, answer);
    }
    return boat.withPointAnswers(all);
  }

  /**
   * The boat with an entry for every question; a question without an answer is entered as not
   * looked at. Answers to questions that no longer exist are dropped.
   */
  public static Boat withAll(Boat boat, List<PointQuestion> questions, String by, LocalDate today) {
    return boat.withPointAnswers(
        questions.stream()
            .map(
                q ->
                    q.answerOf(boat)
                        .orElseGet(
                            () -> q.answered(PointCondition.NOT_LOOKED_AT, "", by, today, boat)))
            .toList());
  }
}
