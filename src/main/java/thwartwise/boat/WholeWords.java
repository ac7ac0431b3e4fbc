package thwartwise.boat;

import java.util.regex.Pattern;

/** Words looked for in the names people give to things, in capitals or small letters. */
final class WholeWords {
  private WholeWords() {}

  /**
   * @param words one or several with {@code |} between
   */
  static Pattern of(String words) {
    return Pattern.compile(
        "\\b(" + words + ")\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);
  }
}
