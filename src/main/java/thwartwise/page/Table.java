package thwartwise.page;

import java.util.List;

/**
 * Rows under heads.
 *
 * @param columns from left to right
 * @param rows each with a cell for every column, or with fewer: then the last cell takes all the
 *     room that is left
 */
public record Table(List<Column> columns, List<List<String>> rows) {
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * @param head what stands above it
   * @param width in characters, where the page is plain text
   */
  public record Column(String head, int width) {}

  /** The columns a cell runs over. */
  int span(List<String> row, int cell) {
    return cell == row.size() - 1 ? columns.size() - cell : 1;
  }
}
