package thwartwise.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.page.Block.Illustration;

/** The pieces of a page as well-formed HTML, for browsers and for the PDF. */
public final class HtmlForm implements Form {
  /** A banner with fewer letters is set larger. */
  private static final int SHORT = 20;

  /** A title with more letters is set smaller. */
  private static final int LONG = 60;

  private final StringBuilder body = new StringBuilder();

  /**
   * The element that is open because several pieces of one kind follow each other; blank when none
   * is.
   */
  private String open = "";

  private boolean separate;

  private final List<String> headings;
  private int heading;

  private HtmlForm(Page page) {
    headings = page.blocks().stream().flatMap(HtmlForm::heading).toList();
  }

  private static Stream<String> heading(Block block) {
    if (block instanceof Block.Heading heading) {
      return Stream.of(heading.words());
    }
    return block instanceof Block.Part part ? Stream.of(part.words()) : Stream.empty();
  }

  static String of(Page page) {
    HtmlForm form = new HtmlForm(page);
    page.blocks().forEach(block -> block.in(form));
    form.within("");
    return form.body.toString();
  }

  @Override
  public void title(String words) {
    String size = words.length() > LONG ? " class=\"long\"" : "";
    alone("<h1" + size + ">" + Markup.of(words) + "</h1>");
  }

  @Override
  public void heading(String words) {
    heading("<h2", words);
  }

  @Override
  public void part(String words, boolean fresh) {
    heading("<h2 class=\"part" + (fresh ? " fresh" : "") + "\"", words);
  }

  private void heading(String opening, String words) {
    separate = false;
    heading++;
    alone(opening + " id=\"" + anchor(heading) + "\">" + Markup.of(words) + "</h2>");
  }

  private static String anchor(int heading) {
    return "part-" + heading;
  }

  @Override
  public void contents() {
    StringBuilder links = new StringBuilder("<nav><ol>\n");
    for (int i = 0; i < headings.size(); i++) {
      links.append("<li><a href=\"#" + anchor(i + 1) + "\">");
      links.append(Markup.of(headings.get(i))).append("</a></li>\n");
    }
    alone(links + "</ol></nav>");
  }

  @Override
  public void folded(String summary, boolean printed, List<Block> blocks) {
    alone(
        "<details"
            + (printed ? "" : " class=\"screen\"")
            + "><summary>"
            + Markup.of(summary)
            + "</summary>");
    blocks.forEach(block -> block.in(this));
    alone("</details>");
    if (!printed) {
      alone("<p class=\"paper\">" + Markup.of(summary) + ": in the HTML page alone.</p>");
    }
  }

  @Override
  public void paragraph(Sentences telling) {
    String kind = (telling.opens() ? "opens" : "told") + (separate ? " apart" : "");
    alone("<p class=\"" + kind + "\">" + Markup.of(telling.joined()) + "</p>");
  }

  @Override
  public void point(Sentences telling) {
    within("ul");
    line("<li>" + sentences(telling) + "</li>");
  }

  @Override
  public void note(String words) {
    within("ul class=\"notes\"");
    line("<li>" + Markup.of(words) + "</li>");
  }

  @Override
  public void numbered(int number, Sentences telling) {
    within("ol");
    line("<li value=\"" + number + "\">" + sentences(telling) + "</li>");
  }

  @Override
  public void ticked(Sentences telling) {
    within("ul class=\"ticks\"");
    line("<li><span class=\"box\"></span>" + sentences(telling) + "</li>");
  }

  /** Several sentences in one point; the first is its subject. */
  private static String sentences(Sentences telling) {
    String first = telling.first().map(f -> "<strong>" + Markup.of(f) + "</strong> ").orElse("");
    return first + Markup.of(telling.rest());
  }

  @Override
  public void picture(String line) {
    alone("<pre>" + Markup.spaced(line) + "</pre>");
  }

  @Override
  public void gap() {
    within("");
    separate = true;
  }

  @Override
  public void banner(String words) {
    String size = words.length() < SHORT ? "banner large" : "banner";
    alone("<p class=\"" + size + "\">" + Markup.of(words) + "</p>");
  }

  @Override
  public void figure(String figure, String of) {
    within("div class=\"figures\"");
    line(
        "<p class=\"figure\"><strong>"
            + Markup.of(figure)
            + "</strong> <span>"
            + Markup.of(of)
            + "</span></p>");
  }

  @Override
  public void load(LoadBar bar) {
    alone(LoadDrawing.of(bar));
  }

  @Override
  public void table(Table table) {
    alone(HtmlTable.of(table));
  }

  @Override
  public void drawn(Illustration drawn) {
    alone(
        "<figure class=\"drawn\"><h3>"
            + Markup.of(drawn.title())
            + "</h3><div role=\"img\" aria-label=\""
            + Markup.bare(drawn.alternative())
            + "\">"
            + drawn.svg().strip()
            + "</div><figcaption>"
            + Markup.of(drawn.caption())
            + "</figcaption></figure>");
  }

  @Override
  public void writtenOn(String label) {
    alone("<p class=\"written\"><span>" + Markup.of(label) + "</span></p>");
  }

  private void alone(String element) {
    within("");
    line(element);
    separate = false;
  }

  /** Opens that element unless it is open already, and closes any other. */
  private void within(String element) {
    if (open.equals(element)) {
      return;
    }
    if (!open.isEmpty()) {
      line("</" + open.split(" ", 2)[0] + ">");
    }
    if (!element.isEmpty()) {
      line("<" + element + ">");
    }
    open = element;
  }

  private void line(String markup) {
    body.append(markup).append('\n');
  }

  /**
   * A table as HTML. Each cell names the head of its column, because on a narrow screen the cells
   * stand below each other.
   */
  private static final class HtmlTable {
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

    /** The widths as shares, so that no word is broken that would fit in plain text. */
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
      if (cell instanceof Table.Ranges ranges) {
        return Markup.of(ranges.word())
            + ranges.bars().stream().map(RangeBar::svg).collect(Collectors.joining());
      }
      return cell instanceof Table.Bar bar
          ? bar((int) Math.floor(100 * bar.share()))
          : Markup.of(((Table.Words) cell).words());
    }

    /** The share is also text, for a reader who hears the page. */
    private static String bar(int percent) {
      return "<span class=\"bar\" role=\"img\" aria-label=\""
          + percent
          + "%\"><span class=\"filled\" style=\"width: "
          + percent
          + "%\"></span></span>";
    }
  }
}
