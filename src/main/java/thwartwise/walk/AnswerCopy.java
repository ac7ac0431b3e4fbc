package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/**
 * The command {@code same} or {@code same as 3}. It copies the answers of another item of the same
 * list to this question and the ones after it, as if each had been typed. Two kinds of question are
 * asked again: what was measured of one chamber alone, and where a thing lies, unless {@code same}
 * is typed there too.
 *
 * @param other the number of the other one
 */
record AnswerCopy(Walk walk, AnswerGroup group, int other) {
  private static final Pattern SAME =
      Pattern.compile("same(?: again)?(?: as(?: [a-z]+)?(?: (?:number )?(\\d{1,2}))?)?");

  /** The question at which the command was typed; without a number it copies the item before. */
  static Optional<AnswerCopy> parse(Walk walk, String question, String word) {
    Matcher same = SAME.matcher(word);
    if (!same.matches()) {
      return Optional.empty();
    }
    return AnswerGroup.of(question)
        .filter(group -> group.number() > 0)
        .map(group -> new AnswerCopy(walk, group, number(same, group)));
  }

  private static int number(Matcher same, AnswerGroup group) {
    return same.group(1) == null ? group.number() - 1 : Integer.parseInt(same.group(1));
  }

  Reply apply(List<Answer> answers) {
    Map<String, String> given =
        answers.stream().collect(Collectors.toMap(Answer::question, Answer::typed, (a, b) -> a));
    List<String> understood = new ArrayList<>();
    List<Answer> sofar = answers;
    if (isMeasured(sofar)) {
      return new Reply.Refused(NOT_COPIED);
    }
    while (other != group.number()
        && !isMeasured(sofar)
        && (understood.isEmpty() || !isWhereItLies(sofar))
        && walk.next(sofar) instanceof Step.Ask ask) {
      String typed = given.get(copied(ask.question().key()));
      if (typed == null
          || !group.holds(ask.question().key())
          || !(walk.take(sofar, typed) instanceof Reply.Accepted accepted)) {
        break;
      }
      sofar = accepted.answers();
      understood.add(accepted.understood());
    }
    return understood.isEmpty()
        ? new Reply.Refused(
            "There is no number %d whose answers fit here. Type same as and its number, or answer; a"
                    .formatted(other)
                + " name is its own.")
        : new Reply.Accepted(sofar, String.join("\n  ", understood));
  }

  private static final String NOT_COPIED =
      "What was measured of another chamber says nothing about this one. Type what this one showed.";

  private boolean isMeasured(List<Answer> sofar) {
    return isOpen(sofar, AnswerGroup::isMeasuredOfItself);
  }

  private boolean isWhereItLies(List<Answer> sofar) {
    return isOpen(sofar, AnswerGroup::isWhereItLies);
  }

  private boolean isOpen(List<Answer> sofar, Predicate<String> question) {
    return walk.next(sofar) instanceof Step.Ask ask && question.test(ask.question().key());
  }

  private String copied(String question) {
    return group.holds(question) ? group.of(other, question) : "";
  }
}
