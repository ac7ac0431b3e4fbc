package thwartwise.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Block.Illustration;

/** A page as plain text, wrapped to 80 columns. */
public final class TextForm implements Form {
  public static final int WIDTH = 80;

  /** The width of the load bar between its ends. */
  private static final int BAR = 60;

  /** The width of the figures of a card. */
  private static final int FIGURES = 10;

  private static final String KEY = " k: kit   p: people aboard today   .: left   !: too much";

  private final StringBuilder text = new StringBuilder();

  private TextForm() {}

  public static String of(Page page) {
    TextForm form = new TextForm();
    page.blocks().forEach(block -> block.in(form));
    return form.text.toString();
  }

  @Override
  public void title(String words) {
    underlined(words, '=');
  }

  @Override
  public void heading(String words) {
    gap();
    underlined(words, '-');
  }

  @Override
  public void part(String words, boolean fresh) {
    heading(words);
  }

  /** Plain text has no links. */
  @Override
  public void contents() {}

  @Override
  public void folded(String summary, boolean printed, List<Block> blocks) {
    gap();
    wrapped(summary + ":", "", "");
    blocks.forEach(block -> block.in(this));
  }

  @Override
  public void paragraph(Sentences telling) {
    wrapped(telling.joined(), "", "");
  }

  @Override
  public void point(Sentences telling) {
    wrapped(telling.joined(), "* ", "  ");
  }

  @Override
  public void note(String words) {
    wrapped(words, "", "  ");
  }

  @Override
  public void numbered(int number, Sentences telling) {
    wrapped(telling.joined(), number + ". ", "   ");
  }

  @Override
  public void ticked(Sentences telling) {
    wrapped(telling.joined(), "[ ] ", "    ");
  }

  @Override
  public void picture(String line) {
    line(line);
  }

  @Override
  public void gap() {
    line("");
  }

  @Override
  public void banner(String words) {
    wrapped(words, "*** ", "*** ");
  }

  @Override
  public void figure(String figure, String of) {
    String start = figure + " ".repeat(Math.max(1, FIGURES - LineWrap.columns(figure)));
    wrapped(of, start.replace(UnitFormat.TIED, " "), " ".repeat(FIGURES));
  }

  @Override
  public void load(LoadBar bar) {
    StringBuilder drawn = new StringBuilder("[");
    for (int i = 0; i < BAR; i++) {
      drawn.append(letter(bar, (i + 0.5) / BAR * bar.end()));
    }
    line(drawn + "] " + bar.endShown().replace(UnitFormat.TIED, " "));
    line(KEY);
  }

  private static char letter(LoadBar bar, double at) {
    return at > bar.limit() ? '!' : at < bar.kit() ? 'k' : at < bar.used() ? 'p' : '.';
  }

  @Override
  public void table(Table table) {
    TextTable.lines(table).forEach(this::line);
  }

  /** Plain text shows no pictures; the sentences of the page say the same. */
  @Override
  public void drawn(Illustration drawn) {}

  @Override
  public void writtenOn(String label) {
    String start = label + ": ";
    line("");
    line(start + "_".repeat(WIDTH - LineWrap.columns(start)));
  }

  private void underlined(String words, char under) {
    int longest = 0;
    for (String line : LineWrap.lines(words, "", "", WIDTH)) {
      line(line);
      longest = Math.max(longest, LineWrap.columns(line));
    }
    line(String.valueOf(under).repeat(longest));
  }

  private void wrapped(String words, String first, String hanging) {
    LineWrap.lines(words, first, hanging, WIDTH).forEach(this::line);
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  /** A table in text. Its cells may need several lines, and no line is wider than the page. */
  private static final class TextTable {
    private static final String GAP = " ";

    private final Table table;
    private final List<String> lines = new ArrayList<>();

    private TextTable(Table table) {
      this.table = table;
    }

    /** Its lines, with a blank one after each row unless the rows are close. */
    static List<String> lines(Table table) {
      return new TextTable(table).lines();
    }

    private List<String> lines() {
      row(table.columns().stream().<Table.Cell>map(c -> new Table.Words(c.head())).toList());
      lines.add(
          String.join(GAP, table.columns().stream().map(c -> "-".repeat(c.width())).toList()));
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
      if (cell instanceof Table.Ranges ranges) {
        return drawn(ranges, width);
      }
      return cell instanceof Table.Bar bar
          ? List.of(drawn(bar, width))
          : LineWrap.lines(((Table.Words) cell).words(), "", "", width);
    }

    private static List<String> drawn(Table.Ranges ranges, int width) {
      List<String> bars = ranges.bars().stream().map(bar -> bar.text(width)).toList();
      return ranges.word().isBlank()
          ? bars
          : Stream.concat(Stream.of(ranges.word()), bars.stream()).toList();
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
}
