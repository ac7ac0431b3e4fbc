package thwartwise.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import thwartwise.page.TextForm;

/**
 * Wraps text between words at the width of a terminal of 80 columns, because a terminal itself
 * breaks lines within a word. A line that fits stays as it is, with its drawings and columns.
 */
final class TerminalLines {
  /** The extra indent of the rest of an indented line. */
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
    String current = "";
    for (String word : line.strip().split(" +")) {
      String longer = current.isEmpty() ? indent + word : current + " " + word;
      if (!current.isEmpty() && columns(longer) > TextForm.WIDTH) {
        lines.add(current);
        longer = hanging + word;
      }
      current = longer;
    }
    lines.add(current);
    return lines;
  }

  private static int columns(String line) {
    return line.codePointCount(0, line.length());
  }
}
