package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import thwartwise.page.LineWrap;

/** Lines of a screen: a word in front, what it is about behind it, wrapped. */
final class ScreenLines {
  static final int LABEL = 8;
  private final List<String> lines = new ArrayList<>();

  /** Nothing where there are no words. */
  void add(String label, String words) {
    if (!words.isBlank()) {
      wrapped(padded(label, LABEL), words);
    }
  }

  /** Words at the margin. */
  void whole(String words) {
    wrapped("", words);
  }

  /** The same with what stands in front of the words as it is. */
  void add(String label, String first, String words) {
    wrapped(padded(label, LABEL) + first, words);
  }

  private void wrapped(String start, String words) {
    lines.addAll(LineWrap.lines(words, start, " ".repeat(start.length()), Screen.COLUMNS));
  }

  List<String> all() {
    return List.copyOf(lines);
  }

  static String padded(String words, int width) {
    return words + " ".repeat(Math.max(0, width - LineWrap.columns(words)));
  }
}
