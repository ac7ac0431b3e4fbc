package thwartwise.page;

import java.util.List;

/**
 * Rows under heads.
 *
 * @param columns from left to right
 * @param rows each with a cell for every column, or with fewer: then the last cell takes the
 *     remaining width
 * @param close whether the rows of plain text follow each other without a blank line
 */
public record Table(List<Column> columns, List<List<Cell>> rows, boolean close) {
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** Rows of text with blank lines between them. */
  public static Table of(List<Column> columns, List<List<String>> rows) {
    return new Table(columns, cells(rows), false);
  }

  /** Rows of text without blank lines. */
  public static Table close(List<Column> columns, List<List<String>> rows) {
    return new Table(columns, cells(rows), true);
  }

  private static List<List<Cell>> cells(List<List<String>> rows) {
    return rows.stream().map(row -> row.stream().<Cell>map(Words::new).toList()).toList();
  }

  /**
   * @param head its title
   * @param width in characters, where the page is plain text
   */
  public record Column(String head, int width) {}

  /** The content of one column in one row. */
  public sealed interface Cell {}

  public record Words(String words) implements Cell {}

  /**
   * A small bar.
   *
   * @param share of its whole length, 0 to 1
   */
  public record Bar(double share) implements Cell {
    public Bar {
      share = Math.max(0, Math.min(1, share));
    }
  }

  /**
   * Ranges below each other, after a word if there is one.
   *
   * @param word may be blank
   */
  public record Ranges(String word, List<RangeBar> bars) implements Cell {
    public Ranges {
      bars = List.copyOf(bars);
    }
  }

  /** The columns that a cell spans. */
  int span(List<Cell> row, int cell) {
    return cell == row.size() - 1 ? columns.size() - cell : 1;
  }
}
