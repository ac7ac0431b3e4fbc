package thwartwise.walk.engine;

/**
 * An answer that fits its question.
 *
 * @param governsTheRest true when later answers mean something else once this one changes
 */
public record AcceptedAnswer(
    Question question, Answer answer, String understood, boolean governsTheRest) {

  public String line() {
    return question.repeat(understood);
  }
}
