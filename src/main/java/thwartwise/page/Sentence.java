package thwartwise.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Text as sentences: a capital at the start, a full stop at the end. */
public final class Sentence {
  private Sentence() {}

  public static String of(String words) {
    String bare = words.strip();
    if (bare.isEmpty()) {
      return "";
    }
    return withFullStop(capital(bare));
  }

  /** Adds a full stop, where it has none. */
  public static String withFullStop(String words) {
    return words + (".!?:".indexOf(words.charAt(words.length() - 1)) < 0 ? "." : "");
  }

  public static String capital(String words) {
    int first = words.isEmpty() ? 0 : words.offsetByCodePoints(0, 1);
    return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
  }

  /** In small letters, for the middle of a sentence. */
  public static String small(String words) {
    int first = words.isEmpty() ? 0 : words.offsetByCodePoints(0, 1);
    return words.substring(0, first).toLowerCase(Locale.ROOT) + words.substring(first);
  }

  public static String joined(List<String> sentences) {
    return sentences.stream()
        .map(Sentence::of)
        .filter(sentence -> !sentence.isEmpty())
        .collect(Collectors.joining(" "));
  }

  /** A list in words: "a", "a and b", "a, b and c". */
  public static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
