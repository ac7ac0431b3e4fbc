package thwartwise.walk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thwartwise.boat.Boat;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/** What is typed in the walk of changes, by question; whatever is not noted is left at Enter. */
record ChangedSheet(Boat before, LocalDate today, Map<String, String> typed) {

  static ChangedSheet of(Boat before) {
    return new ChangedSheet(
        before,
        Sheet.TODAY,
        Map.of("way", "changed", "changed.boat", before.name(), "units", "metric"));
  }

  ChangedSheet on(LocalDate day) {
    return new ChangedSheet(before, day, typed);
  }

  ChangedSheet with(String key, String other) {
    Map<String, String> changed = new LinkedHashMap<>(typed);
    changed.put(key, other);
    return new ChangedSheet(before, today, changed);
  }

  private Walk walk() {
    return Sheet.walk(today, new PreviousBoats(List.of(before)));
  }

  /** Every question on the way, in the order they are asked. */
  List<Question> questions() {
    List<Question> asked = new ArrayList<>();
    Walk walk = walk();
    List<Answer> answers = List.of();
    while (walk.next(answers) instanceof Step.Ask ask) {
      asked.add(ask.question());
      answers = answered(walk, answers, ask.question());
    }
    return asked;
  }

  Boat boat() {
    Walk walk = walk();
    List<Answer> answers = List.of();
    while (walk.next(answers) instanceof Step.Ask ask) {
      answers = answered(walk, answers, ask.question());
    }
    return ((Step.Done) walk.next(answers)).boat();
  }

  private List<Answer> answered(Walk walk, List<Answer> answers, Question question) {
    String line = typed.getOrDefault(question.key(), Sheet.unnoted(question.key()));
    if (walk.take(answers, line) instanceof Reply.Accepted accepted) {
      return accepted.answers();
    }
    throw new AssertionError(question.key() + " " + line + ": " + walk.take(answers, line));
  }
}
