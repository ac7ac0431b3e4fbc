package thwartwise.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A run of text in one direction. Each run from right to left stands alone, so that it never turns
 * the figures and words next to it.
 *
 * @param start of its first letter
 * @param end behind its last letter
 */
public record BidiRun(int start, int end, boolean rightToLeft) {

  /** The runs of the words in order, none of them empty. */
  static List<BidiRun> of(String words) {
    List<BidiRun> all = new ArrayList<>();
    int at = 0;
    while (at < words.length()) {
      int start = nextRightToLeft(words, at);
      int end = endOfRightToLeft(words, start);
      add(all, new BidiRun(at, start, false));
      add(all, new BidiRun(start, end, true));
      at = end;
    }
    return all;
  }

  private static void add(List<BidiRun> all, BidiRun stretch) {
    if (stretch.end > stretch.start) {
      all.add(stretch);
    }
  }

  private static int nextRightToLeft(String words, int from) {
    int at = from;
    while (at < words.length() && !isRightToLeft(words.codePointAt(at))) {
      at += Character.charCount(words.codePointAt(at));
    }
    return at;
  }

  /**
   * The end of a run from right to left: behind its last letter and accents, before a digit or a
   * letter of the other direction.
   */
  private static int endOfRightToLeft(String words, int start) {
    int end = start;
    for (int at = start; at < words.length(); ) {
      int letter = words.codePointAt(at);
      at += Character.charCount(letter);
      if (isRightToLeft(letter) || Character.getType(letter) == Character.NON_SPACING_MARK) {
        end = at;
      } else if (Character.isLetterOrDigit(letter)) {
        return end;
      }
    }
    return end;
  }

  private static boolean isRightToLeft(int letter) {
    byte direction = Character.getDirectionality(letter);
    return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
  }

  String in(String words) {
    return words.substring(start, end);
  }
}
