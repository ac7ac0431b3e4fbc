package thwartwise.measure;

import java.text.Normalizer;

/**
 * Reads a name or a short remark: one line without characters that a terminal or a page would obey.
 */
public final class NameReader {
  private final int longest;

  /**
   * @param longest the greatest number of characters
   */
  public NameReader(int longest) {
    this.longest = longest;
  }

  public Reading<String> read(String typed) {
    if (typed.length() > 4 * longest) {
      return tooLong(typed);
    }
    String name =
        Normalizer.normalize(typed, Normalizer.Form.NFC)
            .replaceAll("[\\s\\u00a0\\u2007\\u202f]+", " ")
            .strip();
    if (!name.codePoints().allMatch(PrintableText::isHarmless)) {
      return Reading.refused(
          PrintableText.excerpt(typed)
              + " has signs in it that cannot be printed. Type it without them.");
    }
    if (name.codePoints().noneMatch(Character::isLetterOrDigit)) {
      return Reading.refused(
          PrintableText.excerpt(typed)
              + " has no letter or figure in it. Type a name such as fore locker.");
    }
    return name.codePointCount(0, name.length()) > longest
        ? tooLong(typed)
        : Reading.understood(name, name);
  }

  private Reading<String> tooLong(String typed) {
    return Reading.refused(
        PrintableText.excerpt(typed) + " is too long. Type at most " + longest + " characters.");
  }
}
