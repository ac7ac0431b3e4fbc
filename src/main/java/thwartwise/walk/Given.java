package thwartwise.walk;

/** An answer that fits its question. */
record Given(Question question, Answer answer, String understood) {

  String line() {
    return question.subject() + ": " + understood;
  }
}
