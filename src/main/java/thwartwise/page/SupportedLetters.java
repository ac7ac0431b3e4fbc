package thwartwise.page;

/**
 * Words with a visible mark for every letter our typeface lacks, so that none vanishes without a
 * word.
 */
public record SupportedLetters(String words, boolean marked) {
  static final String MARK = "\u25a1";

  /** What is said where a mark stands. */
  static final String SAID =
      "A "
          + MARK
          + " stands for a letter that the type of this file lacks; the text and HTML pages of the"
          + " same record show it";

  public static SupportedLetters of(String typed) {
    StringBuilder words = new StringBuilder();
    boolean marked = false;
    for (int letter : typed.codePoints().toArray()) {
      boolean known = Typeface.has(letter) || Character.isWhitespace(letter);
      marked |= !known;
      words.append(known ? Character.toString(letter) : MARK);
    }
    return new SupportedLetters(words.toString(), marked);
  }
}
