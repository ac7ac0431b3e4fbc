package thwartwise.measure;

/** What an answer rests on. */
public enum AnswerBasis {
  /** Measured, counted or known. */
  STATED,
  /** A guess, taken as it was given. */
  GUESSED,
  /** A guess that counts as another figure, on the poor side (judgement). */
  GUESS_COUNTED_POORER;

  public boolean isGuess() {
    return this != STATED;
  }
}
