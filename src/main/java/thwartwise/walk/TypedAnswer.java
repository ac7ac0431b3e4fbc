package thwartwise.walk;

import java.util.Optional;
import thwartwise.measure.Reading;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.ReplayResult;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Warning;

/**
 * A typed line that answers the open question: accepted, or refused with what may have been meant.
 */
final class TypedAnswer {
  static final String FINISHED =
      "Every question is answered. Type back to return to the last one, or list to see them all.";

  private TypedAnswer() {}

  /** The reply to an answer to the open question. */
  static Reply reply(ReplayResult played, String typed) {
    return played
        .open()
        .map(open -> reply(played, open.entry(), typed))
        .orElseGet(() -> new Reply.Refused(FINISHED));
  }

  private static <T> Reply reply(ReplayResult played, QuestionDefinition<T> entry, String typed) {
    Reading<T> reading = entry.read(typed);
    if (reading instanceof Reading.Understood<T> understood) {
      String repeat = entry.question().repeat(understood.text());
      return new Reply.Accepted(
          played.with(entry, entry.stored(typed, understood.value())),
          repeat + dropped(played, entry) + ended(played, entry, understood.value()));
    }
    String reason = reading.refusal().orElseThrow();
    Optional<Warning> doubt = entry.doubt(typed).filter(d -> d.reason().equals(reason));
    return new Reply.Refused(
        reason,
        doubt.flatMap(Warning::meant),
        doubt
            .filter(Warning::isConfirmable)
            .map(d -> typed.strip() + QuestionDefinition.INSISTED)
            .filter(insisted -> isUsable(entry, insisted)));
  }

  /** Whether an answer that is offered to the person would be accepted in its turn. */
  private static boolean isUsable(QuestionDefinition<?> entry, String offered) {
    return entry.read(offered).refusal().isEmpty();
  }

  /** The rows of a list that has just ended, so that a slip in them is seen. */
  private static String ended(ReplayResult played, QuestionDefinition<?> entry, Object value) {
    return value.equals(false)
        ? EnteredRows.finishedList(played, entry.key()).map(table -> "\n" + table).orElse("")
        : "";
  }

  private static String dropped(ReplayResult played, QuestionDefinition<?> entry) {
    long later = played.restExcept(entry.key()).count();
    return entry.governsTheRest() && later > 0
        ? " (the answers after it meant something else before: " + later + " to be asked again)"
        : "";
  }
}
