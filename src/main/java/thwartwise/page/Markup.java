package thwartwise.page;

import thwartwise.measure.PrintableText;

/**
 * Text for HTML pages; every word of such a page passes through it. It escapes markup, neutralises
 * unprintable characters, and keeps words from right to left from turning what stands next to them.
 */
public final class Markup {
  private Markup() {}

  /** Text between tags. */
  static String of(String words) {
    String printed = printed(words);
    StringBuilder markup = new StringBuilder();
    for (BidiRun stretch : BidiRun.of(printed)) {
      String escaped = escaped(stretch.in(printed));
      markup.append(stretch.rightToLeft() ? "<bdi>" + escaped + "</bdi>" : escaped);
    }
    return markup.toString();
  }

  /** Text of an attribute, or where no element may stand. */
  public static String bare(String words) {
    return escaped(printed(words));
  }

  /** Text in which every blank counts. */
  static String spaced(String line) {
    return escaped(PrintableText.of(line));
  }

  /** Replaces a tab or line end by a blank; a no-break blank stays. */
  private static String printed(String words) {
    return PrintableText.of(words.strip().replaceAll("\\s+", " "));
  }

  private static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
