package thwartwise.walk.stations;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One line of a table, split into cells.
 *
 * @param line its number in the text, counted from one
 */
record TableRow(int line, List<String> cells) {
  private static final int MOST_LINES = 200;
  private static final int MOST_CELLS = 40;
  private static final Pattern FRACTION = Pattern.compile("\\d{1,3}/\\d{1,3}");
  private static final Pattern RULE = Pattern.compile("[-|:+=_\\s]*");
  private static final Pattern WHOLE = Pattern.compile("\\d{1,4}");

  TableRow {
    cells = List.copyOf(cells);
  }

  static List<TableRow> of(String text) {
    List<String> lines = text.lines().map(TableRow::clean).toList();
    if (lines.size() > MOST_LINES) {
      throw new TableFault(
          "The table has %s lines. Expected at most %s.".formatted(lines.size(), MOST_LINES));
    }
    CellSeparator between = CellSeparator.of(lines);
    List<TableRow> rows = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (!isLeftOut(lines.get(i))) {
        rows.add(new TableRow(i + 1, cells(lines.get(i), between, i + 1)));
      }
    }
    return rows;
  }

  private static String clean(String line) {
    return line.replace('\u00a0', ' ').replace("\ufeff", "").stripTrailing();
  }

  /** Whether the line is a remark or only a drawn line. */
  private static boolean isLeftOut(String line) {
    return line.strip().startsWith("#") || RULE.matcher(line).matches();
  }

  private static List<String> cells(String line, CellSeparator between, int number) {
    List<String> cells = new ArrayList<>();
    Arrays.stream(between.split(line)).map(String::strip).map(TableRow::bare).forEach(cells::add);
    if (cells.size() > MOST_CELLS) {
      throw TableFault.at(
          number, "it has %s columns. Expected at most %s.".formatted(cells.size(), MOST_CELLS));
    }
    return between.isBlanks() ? named(fractions(cells)) : cells;
  }

  private static String bare(String cell) {
    return cell.length() > 1 && cell.startsWith("\"") && cell.endsWith("\"")
        ? cell.substring(1, cell.length() - 1).strip()
        : cell;
  }

  /** Joins a number and its fraction, such as 16 3/8, which a blank separates. */
  private static List<String> fractions(List<String> tokens) {
    List<String> joined = new ArrayList<>();
    for (String token : tokens) {
      int last = joined.size() - 1;
      if (last >= 0
          && FRACTION.matcher(token).matches()
          && WHOLE.matcher(joined.get(last)).matches()) {
        joined.set(last, joined.get(last) + " " + token);
      } else {
        joined.add(token);
      }
    }
    return joined;
  }

  /**
   * Joins the words of a name before the first figure, or of a line of words alone, into one cell.
   */
  private static List<String> named(List<String> tokens) {
    int words = 0;
    while (words < tokens.size() && !TableFigure.isLike(tokens.get(words))) {
      words++;
    }
    if (words < 2) {
      return tokens;
    }
    List<String> cells = new ArrayList<>(List.of(String.join(" ", tokens.subList(0, words))));
    cells.addAll(tokens.subList(words, tokens.size()));
    return cells;
  }

  String first() {
    return cells.get(0);
  }

  /** All words of the line, whatever separates them. */
  String words() {
    return String.join(" ", cells).strip();
  }

  boolean isWords() {
    return cells.stream().noneMatch(TableFigure::isLike);
  }

  /**
   * Whether the line holds mostly words. It may also hold figures, such as the length of the boat.
   */
  boolean isTitle() {
    return !CellSeparator.isRowOfFigures(words());
  }

  /** The number of cells that look like figures. */
  long figures() {
    return cells.stream().filter(TableFigure::isLike).count();
  }

  TableFigure figure(int cell) {
    if (cell >= cells.size() || cells.get(cell).isEmpty()) {
      throw TableFault.at(
          line, cell + 1, "nothing stands there. Expected a figure, as in the lines above it.");
    }
    return TableFigure.of(cells.get(cell), line, cell + 1);
  }
}
