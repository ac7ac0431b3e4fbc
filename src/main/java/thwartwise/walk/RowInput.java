package thwartwise.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import thwartwise.measure.Dimension;
import thwartwise.measure.PrintableText;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.UnitSystem;
import thwartwise.measure.YesOrNo;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/**
 * A row typed at once, for a station, a piece of kit or a chamber. Either the whole row becomes
 * answers, one for each question, or none of it does.
 *
 * @param group whose questions it answers
 */
record RowInput(Walk walk, AnswerGroup group) {
  private static final String BETWEEN = ";";

  /** The row that begins at this question, or after its yes; empty if no row was typed. */
  static Optional<RowInput> at(Walk walk, List<Answer> answers, String question, String typed) {
    boolean isRow = typed.contains(BETWEEN) && !typed.replace(BETWEEN, "").isBlank();
    return isRow && !AnswerGroup.isFreeWords(question)
        ? AnswerGroup.of(question)
            .or(() -> behindYes(walk, answers, question))
            .map(group -> new RowInput(walk, group))
        : Optional.empty();
  }

  /** A row also answers yes to the question whether there is such a thing. */
  private static Optional<AnswerGroup> behindYes(Walk walk, List<Answer> answers, String question) {
    return question.endsWith(RepeatedQuestion.ANY)
            && walk.take(answers, "yes") instanceof Reply.Accepted yes
            && walk.next(yes.answers()) instanceof Step.Ask first
        ? AnswerGroup.of(first.question().key())
        : Optional.empty();
  }

  Reply apply(List<Answer> answers, String typed) {
    List<String> understood = new ArrayList<>();
    List<Answer> sofar = answers;
    String[] values = typed.split(BETWEEN, -1);
    for (int i = 0; i < values.length; i++) {
      sofar = i == 0 ? toTheFirstValue(sofar, values[0]) : sofar;
      if (!isOpen(sofar) && isBlankFrom(values, i)) {
        break;
      }
      Reply reply = isOpen(sofar) ? walk.take(sofar, values[i]) : tooMany(i);
      if (!(reply instanceof Reply.Accepted accepted)) {
        return wrong(i, values, sofar, reply);
      }
      sofar = accepted.answers();
      understood.add(accepted.understood());
    }
    return new Reply.Accepted(sofar, String.join("\n  ", understood));
  }

  /**
   * Whether a row is empty from here on. Some things have fewer questions, so the end of a row may
   * stay empty.
   */
  private static boolean isBlankFrom(String[] values, int first) {
    return first > 0 && Arrays.stream(values).skip(first).allMatch(String::isBlank);
  }

  /**
   * The answers of one row. A row says that there is another thing; a figure in the place of an
   * optional name means that there is no name.
   */
  private List<Answer> toTheFirstValue(List<Answer> answers, String value) {
    String open = openKey(answers).orElse("");
    boolean another =
        open.endsWith(RepeatedQuestion.ANY) && YesOrNo.read(value).refusal().isPresent();
    boolean unnamed = open.endsWith(".name") && isFigureOrWord(value);
    if (!another && !unnamed) {
      return answers;
    }
    return walk.take(answers, another ? "yes" : "") instanceof Reply.Accepted accepted
        ? accepted.answers()
        : answers;
  }

  static boolean isMass(String value) {
    return new QuantityReader(Dimension.MASS, UnitSystem.METRIC).read(value).refusal().isEmpty();
  }

  static boolean isFigureOrWord(String value) {
    return YesOrNo.read(value).refusal().isEmpty()
        || new QuantityReader(Dimension.LENGTH, UnitSystem.METRIC).read(value).refusal().isEmpty();
  }

  private boolean isOpen(List<Answer> sofar) {
    return openKey(sofar).filter(group::holds).isPresent();
  }

  private Optional<String> openKey(List<Answer> sofar) {
    return walk.next(sofar) instanceof Step.Ask ask
        ? Optional.of(ask.question().key())
        : Optional.empty();
  }

  private static Reply tooMany(int taken) {
    return new Reply.Refused("the row ends after " + taken + " of them.");
  }

  /** Refuses the row, and offers it once more with what was probably meant by its value. */
  private Reply wrong(int at, String[] values, List<Answer> sofar, Reply reply) {
    Optional<Reply.Refused> refused =
        reply instanceof Reply.Refused why ? Optional.of(why) : Optional.empty();
    String reason = refused.map(Reply.Refused::reason).orElse("a word, and no value.");
    return new Reply.Refused(
        "Value %d of the row, %s%s Nothing of the row was taken."
            .formatted(at + 1, PrintableText.excerpt(values[at].strip()), answering(sofar, reason)),
        refused.flatMap(Reply.Refused::meant).map(value -> with(values, at, value)),
        refused.flatMap(Reply.Refused::insisted).map(value -> with(values, at, value)));
  }

  private static String with(String[] values, int at, String value) {
    String[] row = values.clone();
    row[at] = value;
    return String.join(BETWEEN, row);
  }

  /** Names the question that the value was read for; a value too many has none. */
  private String answering(List<Answer> sofar, String reason) {
    return isOpen(sofar) && walk.next(sofar) instanceof Step.Ask ask
        ? " for " + ask.question().repeat(reason)
        : ": " + reason;
  }
}
