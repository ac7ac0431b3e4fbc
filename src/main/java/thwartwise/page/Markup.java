package thwartwise.page;

import thwartwise.measure.PrintableText;

/**
 * Words made into the text of a page that browsers read: the one door through which every word
 * reaches it. What could be taken for markup is written out, what cannot be printed is neutralised,
 * and words written from right to left are kept from turning what stands next to them.
 */
public final class Markup {
  private Markup() {}

  /** As text between tags. */
  static String of(String words) {
    String printed = printed(words);
    StringBuilder markup = new StringBuilder();
    for (BidiRun stretch : BidiRun.of(printed)) {
      String escaped = escaped(stretch.in(printed));
      markup.append(stretch.rightToLeft() ? "<bdi>" + escaped + "</bdi>" : escaped);
    }
    return markup.toString();
  }

  /** As the value of an attribute, and where no element may stand. */
  public static String bare(String words) {
    return escaped(printed(words));
  }

  /** As text in which every blank counts. */
  static String spaced(String line) {
    return escaped(PrintableText.of(line));
  }

  /** A tab or line end is a blank like any other; the blank that ties a figure stays. */
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
