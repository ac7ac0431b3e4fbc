package thwartwise.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import thwartwise.page.TextForm;

/**
 * Breaks what is said between words where a terminal of 80 columns ends; a terminal by itself would
 * break it within a word. What fits stays as it is, with its drawings and columns.
 */
final class TerminalLines {
  /** How much further in the rest of a line stands that stands in already. */
  private static final String HANGING = "  ";

  private TerminalLines() {}

  static String fitted(String text) {
    return text.lines().flatMap(line -> broken(line).stream()).collect(Collectors.joining("\n"));
  }

  private static List<String> broken(String line) {
    if (columns(line) <= TextForm.WIDTH) {
      return List.of(line);
    }
    String indent = " ".repeat(line.length() - line.stripLeading().length());
    String hanging = indent.isEmpty() ? "" : indent + HANGING;
    List<String> lines = new ArrayList<>();
    String begun = "";
    for (String word : line.strip().split(" +")) {
      String longer = begun.isEmpty() ? indent + word : begun + " " + word;
      if (!begun.isEmpty() && columns(longer) > TextForm.WIDTH) {
        lines.add(begun);
        longer = hanging + word;
      }
      begun = longer;
    }
    lines.add(begun);
    return lines;
  }

  private static int columns(String line) {
    return line.codePointCount(0, line.length());
  }
}
