package thwartwise.walk.stations;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The separator between the cells of a table. Rows of figures decide which one it is, because a
 * comma may be punctuation in the title of a plan and the decimal sign in figures.
 */
enum CellSeparator {
  TAB("\t"),
  SEMICOLON(";"),
  BAR("\\|"),
  COMMA(","),
  BLANKS("\\s+");

  private static final Pattern ANY = Pattern.compile("[\\s,;|]+");
  private static final Pattern BLANKS_BETWEEN = Pattern.compile("\\s+");
  private static final Pattern FRACTION = Pattern.compile("\\d{1,3}/\\d{1,3}");

  private static final Pattern FRAME = Pattern.compile("^\\||\\|$");

  private final Pattern between;

  CellSeparator(String between) {
    this.between = Pattern.compile(between);
  }

  static CellSeparator of(List<String> lines) {
    List<String> rows = lines.stream().filter(CellSeparator::isRowOfFigures).toList();
    return Arrays.stream(values())
        .filter(separator -> separator == BLANKS || separator.separatesMost(rows))
        .findFirst()
        .orElse(BLANKS);
  }

  /** Whether a line has more figures than words; a title has more words. */
  static boolean isRowOfFigures(String line) {
    List<String> words = Arrays.stream(ANY.split(line)).filter(w -> !w.isEmpty()).toList();
    return 2 * words.stream().filter(TableFigure::isLike).count() > words.size();
  }

  private boolean separatesMost(List<String> rows) {
    return 2 * rows.stream().filter(this::separates).count() > rows.size();
  }

  /**
   * Whether this separator stands between all figures of a row, so that each is alone in its cell.
   */
  private boolean separates(String row) {
    String[] cells = between.split(row, -1);
    return cells.length > 1 && Arrays.stream(cells).allMatch(cell -> figures(cell) <= 1);
  }

  /** The figures of a line. A fraction belongs to the figure before it. */
  private static long figures(String cell) {
    return Arrays.stream(BLANKS_BETWEEN.split(cell))
        .filter(word -> TableFigure.isLike(word) && !FRACTION.matcher(word).matches())
        .count();
  }

  boolean isBlanks() {
    return this == BLANKS;
  }

  String[] split(String line) {
    String row = line.strip();
    return between.split(
        switch (this) {
          case BLANKS -> row;
          // A table with this separator often has a frame.
          case BAR -> FRAME.matcher(row).replaceAll("");
          default -> line;
        });
  }
}
