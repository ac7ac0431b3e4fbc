package thwartwise.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A table whose cells run over several lines where they must; no line is wider than the page. */
public final class TextTable {
  private static final String GAP = " ";

  private final Table table;
  private final List<String> lines = new ArrayList<>();

  private TextTable(Table table) {
    this.table = table;
  }

  /** The lines of it; where its rows are not close, a blank one after each. */
  static List<String> lines(Table table) {
    return new TextTable(table).lines();
  }

  private List<String> lines() {
    row(table.columns().stream().<Table.Cell>map(c -> new Table.Words(c.head())).toList());
    lines.add(String.join(GAP, table.columns().stream().map(c -> "-".repeat(c.width())).toList()));
    for (List<Table.Cell> row : table.rows()) {
      row(row);
      if (!table.close()) {
        lines.add("");
      }
    }
    return lines;
  }

  private void row(List<Table.Cell> words) {
    List<List<String>> cells = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      cells.add(lines(words.get(i), width(words, i)));
    }
    int most = Collections.max(cells.stream().map(List::size).toList());
    for (int line = 0; line < most; line++) {
      lines.add(line(words, cells, line));
    }
  }

  private static List<String> lines(Table.Cell cell, int width) {
    return cell instanceof Table.Bar bar
        ? List.of(drawn(bar, width))
        : LineWrap.lines(((Table.Words) cell).words(), "", "", width);
  }

  private static String drawn(Table.Bar bar, int width) {
    int full = (int) Math.floor(bar.share() * width);
    return "#".repeat(full) + ".".repeat(width - full);
  }

  private String line(List<Table.Cell> words, List<List<String>> cells, int line) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String cell = line < cells.get(i).size() ? cells.get(i).get(line) : "";
      text.append(i == 0 ? "" : GAP).append(cell);
      text.append(" ".repeat(Math.max(0, width(words, i) - LineWrap.columns(cell))));
    }
    return text.toString().stripTrailing();
  }

  private int width(List<Table.Cell> row, int cell) {
    return table.columns().subList(cell, cell + table.span(row, cell)).stream()
            .mapToInt(column -> column.width() + GAP.length())
            .sum()
        - GAP.length();
  }
}
