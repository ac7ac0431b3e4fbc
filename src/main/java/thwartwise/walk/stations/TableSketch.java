package thwartwise.walk.stations;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import thwartwise.walk.stations.StationTable.TablePoint;
import thwartwise.walk.stations.StationTable.TableStation;

/**
 * A table as it was understood: the figures in rows, and below them a side view of the boat and a
 * plan of one half, drawn in characters to one scale.
 */
public record TableSketch(StationTable table) {
  private static final int COLUMNS = 70;
  private static final int MOST_ROWS = 12;
  private static final int WIDE = 76;
  private static final int NAME = 14;

  /** The height of a character in units of its width, about. */
  private static final double TALL = 2;

  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Read in %s: %s stations of %s points (%s)."
            .formatted(
                table.unit().words(),
                table.stations().size(),
                table.lines().size(),
                String.join(", ", table.lines())));
    lines.addAll(figures());
    lines.add("");
    lines.add("From the side, aft end on the left:");
    lines.addAll(drawn(TablePoint::z));
    lines.add("Half of it from above, middle line below:");
    lines.addAll(drawn(TablePoint::y));
    if (table.stations().get(0).isPlumb() || last().isPlumb()) {
      lines.add("An end with one distance for all its points is taken as plumb; give a raked one");
      lines.add("the distance of each point.");
    }
    return lines;
  }

  private TableStation last() {
    return table.stations().get(table.stations().size() - 1);
  }

  /** The points of a station in rows, as many in a row as fit. */
  private List<String> figures() {
    int width = Math.max(7, widest() + 1);
    int each = Math.max(1, (WIDE - NAME - 2 - width) / (2 * width));
    List<String> lines = new ArrayList<>();
    for (int from = 0; from < table.lines().size(); from += each) {
      int to = Math.min(table.lines().size(), from + each);
      lines.add(heads(from, to, width));
      for (int i = 0; i < table.stations().size(); i++) {
        lines.add(row(i, from, to, width));
      }
    }
    return lines;
  }

  private int widest() {
    return table.stations().stream()
        .flatMap(s -> s.points().stream())
        .flatMap(p -> List.of(p.x(), p.y(), p.z()).stream())
        .mapToInt(f -> TableUnit.shown(f.value()).length())
        .max()
        .orElse(0);
  }

  private String heads(int from, int to, int width) {
    StringBuilder line = new StringBuilder(padded(table.unit().symbol(), NAME + 2));
    line.append(right("forward", width + 1));
    for (int p = from; p < to; p++) {
      line.append(right("p" + (p + 1) + " out", width)).append(right("up", width));
    }
    return line.toString();
  }

  private String row(int station, int from, int to, int width) {
    TableStation one = table.stations().get(station);
    StringBuilder line = new StringBuilder(padded("  " + table.name(station), NAME + 2));
    line.append(right(forward(one), width + 1));
    for (int p = from; p < to; p++) {
      line.append(right(TableUnit.shown(one.points().get(p).y().value()), width));
      line.append(right(TableUnit.shown(one.points().get(p).z().value()), width));
    }
    return line.toString();
  }

  private static String forward(TableStation station) {
    return station.isPlumb() ? TableUnit.shown(station.points().get(0).x().value()) : "raked";
  }

  private static String padded(String words, int width) {
    String shown = words.length() < width ? words : words.substring(0, width - 2) + "\u2026";
    return shown + " ".repeat(width - shown.length());
  }

  private static String right(String words, int width) {
    return String.format(Locale.ROOT, "%" + width + "s", words);
  }

  private List<String> drawn(Function<TablePoint, TableFigure> up) {
    double length = greatest(TablePoint::x);
    double most = greatest(up);
    double highest = Math.max(greatest(TablePoint::y), greatest(TablePoint::z));
    double perColumn = Math.max(length / (COLUMNS - 1), highest / (TALL * (MOST_ROWS - 1)));
    int rows = Math.min(MOST_ROWS, 1 + (int) Math.round(most / perColumn / TALL));
    char[][] cells = new char[rows][COLUMNS];
    Arrays.stream(cells).forEach(row -> Arrays.fill(row, ' '));
    for (int line = 0; line < table.lines().size(); line++) {
      for (int s = 1; s < table.stations().size(); s++) {
        between(cells, at(s - 1, line), at(s, line), up, perColumn);
      }
    }
    List<String> drawn = new ArrayList<>();
    for (char[] row : cells) {
      drawn.add(("  | " + new String(row)).stripTrailing());
    }
    drawn.add("  +-" + "-".repeat(COLUMNS));
    return drawn;
  }

  private TablePoint at(int station, int line) {
    return table.stations().get(station).points().get(line);
  }

  private double greatest(Function<TablePoint, TableFigure> of) {
    return table.stations().stream()
        .flatMap(s -> s.points().stream())
        .mapToDouble(p -> of.apply(p).value().doubleValue())
        .max()
        .orElse(1);
  }

  private static void between(
      char[][] cells,
      TablePoint a,
      TablePoint b,
      Function<TablePoint, TableFigure> up,
      double perColumn) {
    for (int i = 0; i <= COLUMNS; i++) {
      double share = (double) i / COLUMNS;
      double x = mixed(a.x(), b.x(), share);
      double z = mixed(up.apply(a), up.apply(b), share);
      set(cells, x / perColumn, z / perColumn / TALL, '.');
    }
    for (TablePoint p : List.of(a, b)) {
      set(
          cells,
          p.x().value().doubleValue() / perColumn,
          up.apply(p).value().doubleValue() / perColumn / TALL,
          'o');
    }
  }

  private static double mixed(TableFigure a, TableFigure b, double share) {
    return a.value().doubleValue() * (1 - share) + b.value().doubleValue() * share;
  }

  private static void set(char[][] cells, double right, double up, char mark) {
    int column = (int) Math.round(right);
    int row = cells.length - 1 - (int) Math.round(up);
    boolean inside = column >= 0 && column < COLUMNS && row >= 0 && row < cells.length;
    if (inside && cells[row][column] != 'o') {
      cells[row][column] = mark;
    }
  }
}
