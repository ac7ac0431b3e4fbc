package thwartwise.page;

import java.util.List;

/**
 * A table as markup. Each cell carries the head of its column, so that on a narrow screen, where
 * the cells stand below each other, it can be told what they are.
 */
public final class HtmlTable {
  private HtmlTable() {}

  static String of(Table table) {
    StringBuilder markup = new StringBuilder("<table>\n" + widths(table) + "<thead><tr>");
    for (Table.Column column : table.columns()) {
      markup.append("<th scope=\"col\">").append(Markup.of(column.head())).append("</th>");
    }
    markup.append("</tr></thead>\n<tbody>\n");
    table.rows().forEach(row -> markup.append(row(table, row)));
    return markup.append("</tbody>\n</table>").toString();
  }

  /** In shares, so that no word is broken that would fit in plain text. */
  private static String widths(Table table) {
    int all = table.columns().stream().mapToInt(Table.Column::width).sum();
    StringBuilder markup = new StringBuilder("<colgroup>");
    for (Table.Column column : table.columns()) {
      markup.append("<col style=\"width: " + 100 * column.width() / all + "%\"/>");
    }
    return markup.append("</colgroup>\n").toString();
  }

  private static String row(Table table, List<Table.Cell> row) {
    StringBuilder markup = new StringBuilder("<tr>");
    for (int i = 0; i < row.size(); i++) {
      markup.append(i == 0 ? name(table, row) : cell(table, row, i));
    }
    return markup.append("</tr>\n").toString();
  }

  private static String name(Table table, List<Table.Cell> row) {
    int span = table.span(row, 0);
    String over = span > 1 ? " colspan=\"" + span + "\"" : "";
    return "<th scope=\"row\"" + over + ">" + content(row.get(0)) + "</th>";
  }

  private static String cell(Table table, List<Table.Cell> row, int cell) {
    int span = table.span(row, cell);
    String attribute =
        span > 1
            ? " colspan=\"" + span + "\""
            : " data-head=\"" + Markup.bare(table.columns().get(cell).head()) + "\"";
    return "<td" + attribute + ">" + content(row.get(cell)) + "</td>";
  }

  private static String content(Table.Cell cell) {
    return cell instanceof Table.Bar bar
        ? bar((int) Math.floor(100 * bar.share()))
        : Markup.of(((Table.Words) cell).words());
  }

  /** Whoever has the page read aloud hears the share. */
  private static String bar(int percent) {
    return "<span class=\"bar\" role=\"img\" aria-label=\""
        + percent
        + "%\"><span class=\"filled\" style=\"width: "
        + percent
        + "%\"></span></span>";
  }
}
