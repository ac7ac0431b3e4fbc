package thwartwise.measure;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known word nearest to a misspelt one, by the number of letters to change. */
public final class NearestWord {
  private static final int LONGEST = 100;

  private NearestWord() {}

  public static Optional<String> to(String typed, Collection<String> known) {
    String cut = typed.length() > LONGEST ? typed.substring(0, LONGEST) : typed;
    return known.stream().min(Comparator.comparingInt(word -> distance(lower(cut), lower(word))));
  }

  /** The nearest word, if it is so near that it was probably meant. */
  public static Optional<String> nearest(String typed, Collection<String> known) {
    return to(typed, known)
        .filter(word -> distance(lower(typed), lower(word)) <= Math.max(1, word.length() / 3));
  }

  /**
   * The number of letters to insert, delete or exchange; a swap of two neighbours counts as two.
   */
  static int distance(String a, String b) {
    int[] previous = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      previous = nextRow(a.charAt(i - 1), b, previous, i);
    }
    return previous[b.length()];
  }

  private static int[] nextRow(char letter, String b, int[] previous, int i) {
    int[] row = new int[b.length() + 1];
    row[0] = i;
    for (int j = 1; j <= b.length(); j++) {
      int exchanged = previous[j - 1] + (letter == b.charAt(j - 1) ? 0 : 1);
      row[j] = Math.min(exchanged, 1 + Math.min(previous[j], row[j - 1]));
    }
    return row;
  }

  private static String lower(String word) {
    return word.toLowerCase(Locale.ROOT);
  }
}
