package thwartwise.measure;

import java.util.Set;

/**
 * Words that mean there is none. Taken for the name of a thing, such a word would turn what is
 * missing into something aboard.
 */
public final class NegativeAnswer {
  private static final Set<String> WORDS =
      Set.of(
          "n",
          "no",
          "none",
          "nothing",
          "nobody",
          "not",
          "nil",
          "never",
          "without",
          "open",
          "left open",
          "not closed",
          "nothing closes it",
          "no bung",
          "no lid",
          "unknown",
          "false",
          "n/a",
          "-");

  private NegativeAnswer() {}

  public static boolean matches(String typed) {
    return !NormalizedInput.isTooLong(typed) && WORDS.contains(NormalizedInput.of(typed));
  }
}
