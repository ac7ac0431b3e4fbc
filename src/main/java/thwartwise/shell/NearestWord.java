package thwartwise.shell;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * The known word a misspelt one most likely meant, by the number of letters to add, drop or change.
 */
final class NearestWord {
  private NearestWord() {}

  /** Empty when more than a third of the letters would have to change. */
  static Optional<String> to(String typed, Collection<String> known) {
    String word = typed.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(k -> distance(word, k) <= Math.max(1, k.length() / 3))
        .min(Comparator.comparingInt((String k) -> distance(word, k)).thenComparing(k -> k));
  }

  private static int distance(String from, String to) {
    int[] above = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      above = nextRow(above, i, from.charAt(i - 1), to);
    }
    return above[to.length()];
  }

  private static int[] nextRow(int[] above, int i, char letter, String to) {
    int[] row = new int[above.length];
    row[0] = i;
    for (int j = 1; j < row.length; j++) {
      int changed = above[j - 1] + (letter == to.charAt(j - 1) ? 0 : 1);
      row[j] = Math.min(changed, 1 + Math.min(above[j], row[j - 1]));
    }
    return row;
  }
}
