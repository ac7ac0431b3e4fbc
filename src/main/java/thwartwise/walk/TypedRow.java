package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.measure.QuotedText;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/**
 * All that is asked of one thing typed at once: a station, a chamber, a place, a piece of kit, a
 * person. It becomes one answer a question, as if each had been typed by itself, or nothing of it
 * is taken. Where it is asked whether there is another, a row says yes.
 *
 * @param row what the keys of its questions begin with
 */
record TypedRow(Walk walk, String row) {
  private static final String BETWEEN = ";";
  private static final Pattern ROW =
      Pattern.compile(
          "(hull\\.station\\.\\d+)\\.(?:x|point\\..*|starboard\\..*)"
              + "|((?:(?:changed\\.\\d+\\.)?person|opening|chamber|place|kit)\\.\\d+)\\..+");

  private static final String ANOTHER = ".any";

  /** The row that begins at this question, if a row was typed there. */
  static Optional<TypedRow> at(Walk walk, String question, String typed) {
    return typed.contains(BETWEEN)
        ? row(question).map(row -> new TypedRow(walk, row))
        : Optional.empty();
  }

  private static Optional<String> row(String question) {
    Matcher matcher = ROW.matcher(question);
    return matcher.matches()
        ? Optional.ofNullable(matcher.group(1)).or(() -> Optional.of(matcher.group(2)))
        : Optional.empty();
  }

  Reply taken(List<Answer> answers, String typed) {
    List<String> understood = new ArrayList<>();
    List<Answer> sofar = begun(answers);
    for (String value : typed.split(BETWEEN, -1)) {
      Reply reply = isOpen(sofar) ? walk.take(sofar, value) : tooMany(understood.size());
      if (!(reply instanceof Reply.Accepted accepted)) {
        return new Reply.Refused(wrong(understood.size() + 1, value, reply));
      }
      sofar = accepted.answers();
      understood.add(accepted.understood());
    }
    return new Reply.Accepted(sofar, String.join("\n  ", understood));
  }

  private List<Answer> begun(List<Answer> answers) {
    return walk.next(answers) instanceof Step.Ask ask
            && ask.question().key().endsWith(ANOTHER)
            && walk.take(answers, "yes") instanceof Reply.Accepted accepted
        ? accepted.answers()
        : answers;
  }

  private boolean isOpen(List<Answer> sofar) {
    return walk.next(sofar) instanceof Step.Ask ask
        && row(ask.question().key()).filter(row::equals).isPresent();
  }

  private static Reply tooMany(int taken) {
    return new Reply.Refused("the row ends after " + taken + " of them.");
  }

  private static String wrong(int number, String value, Reply reply) {
    String reason =
        reply instanceof Reply.Refused refused ? refused.reason() : "a word, and no value.";
    return "Value %d of the row, %s: %s Nothing of the row was taken."
        .formatted(number, QuotedText.of(value.strip()), reason);
  }
}
