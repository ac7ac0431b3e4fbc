package thwartwise.measure;

import java.util.Set;

/** Words that mean "I do not know". */
public final class UnknownAnswer {
  private static final Set<String> WORDS =
      Set.of(
          "don't know",
          "dont know",
          "do not know",
          "i don't know",
          "dunno",
          "no idea",
          "not known",
          "not sure",
          "unsure",
          "unknown",
          "can't tell",
          "cannot tell",
          "maybe",
          "perhaps");

  private UnknownAnswer() {}

  public static boolean matches(String typed) {
    return !NormalizedInput.isTooLong(typed) && WORDS.contains(NormalizedInput.of(typed));
  }
}
