package thwartwise.walk;

/**
 * An answer that fits its question.
 *
 * @param governsTheRest true when later answers mean something else once this one changes
 */
record Given(Question question, Answer answer, String understood, boolean governsTheRest) {

  String line() {
    return question.repeat(understood);
  }
}
