package thwartwise.report;

import thwartwise.record.Printable;

/**
 * Words made into the text of a page that browsers read: the one door through which every word
 * reaches it. What could be taken for markup is written out, what cannot be printed is neutralised,
 * and words written from right to left are kept from turning what stands beside them.
 */
final class Markup {
  private Markup() {}

  /** As text between tags. */
  static String of(String words) {
    StringBuilder markup = new StringBuilder();
    String printed = printed(words);
    int at = 0;
    while (at < printed.length()) {
      int start = nextRightToLeft(printed, at);
      int end = endOfRightToLeft(printed, start);
      markup.append(escaped(printed.substring(at, start)));
      if (end > start) {
        markup.append("<bdi>").append(escaped(printed.substring(start, end))).append("</bdi>");
      }
      at = end;
    }
    return markup.toString();
  }

  /** As the value of an attribute, and where no element may stand. */
  static String bare(String words) {
    return escaped(printed(words));
  }

  /** A tab or line end is a blank like any other; the blank that ties a figure stays. */
  private static String printed(String words) {
    return Printable.of(words.strip().replaceAll("\\s+", " "));
  }

  private static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  private static int nextRightToLeft(String words, int from) {
    int at = from;
    while (at < words.length() && !isRightToLeft(words.codePointAt(at))) {
      at += Character.charCount(words.codePointAt(at));
    }
    return at;
  }

  /** Behind the last such letter before one of the other direction, or a digit. */
  private static int endOfRightToLeft(String words, int start) {
    int end = start;
    for (int at = start; at < words.length(); ) {
      int letter = words.codePointAt(at);
      at += Character.charCount(letter);
      if (isRightToLeft(letter)) {
        end = at;
      } else if (Character.isLetterOrDigit(letter)) {
        return end;
      }
    }
    return end;
  }

  static boolean isRightToLeft(int letter) {
    byte direction = Character.getDirectionality(letter);
    return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
  }
}
