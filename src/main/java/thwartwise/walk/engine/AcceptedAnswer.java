package thwartwise.walk.engine;

import thwartwise.measure.Reading.AnswerBasis;

/**
 * An answer that fits its question.
 *
 * @param basis what it rests on
 * @param governsTheRest true when later answers mean something else once this one changes
 */
public record AcceptedAnswer(
    Question question,
    Answer answer,
    String understood,
    AnswerBasis basis,
    boolean governsTheRest) {

  public String line() {
    return question.repeat(understood);
  }
}
