package thwartwise.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A table whose cells run over several lines where they must; no line is wider than the page. */
final class Columns {
  private static final String GAP = " ";
  private final int[] widths;
  private final Page page;

  Columns(Page page, int... widths) {
    this.page = page;
    this.widths = widths;
  }

  Columns heads(String... words) {
    row(words);
    List<String> rules = new ArrayList<>();
    for (int width : widths) {
      rules.add("-".repeat(width));
    }
    page.picture(String.join(GAP, rules));
    return this;
  }

  Columns row(String... words) {
    List<List<String>> cells = new ArrayList<>();
    for (int i = 0; i < words.length; i++) {
      cells.add(Wrap.lines(words[i], "", "", widths[i]));
    }
    lines(cells, widths);
    return this;
  }

  /** A row of which all but the first cell run together. */
  Columns wide(String first, String rest) {
    int[] two = {widths[0], TextForm.WIDTH - widths[0] - GAP.length()};
    lines(List.of(Wrap.lines(first, "", "", two[0]), Wrap.lines(rest, "", "", two[1])), two);
    return this;
  }

  private void lines(List<List<String>> cells, int[] wide) {
    int most = Collections.max(cells.stream().map(List::size).toList());
    for (int line = 0; line < most; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < cells.size(); i++) {
        String cell = line < cells.get(i).size() ? cells.get(i).get(line) : "";
        text.append(i == 0 ? "" : GAP).append(cell);
        text.append(" ".repeat(Math.max(0, wide[i] - Wrap.columns(cell))));
      }
      page.picture(text.toString().stripTrailing());
    }
  }
}
