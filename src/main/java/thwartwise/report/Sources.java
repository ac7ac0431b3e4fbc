package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import thwartwise.page.Page;

/** Sources numbered in the order of their first citation; each is listed once. */
final class Sources {
  private final List<String> all = new ArrayList<>();

  /** The number of the source in brackets; blank without a source. */
  String cite(String source) {
    if (source.isBlank()) {
      return "";
    }
    if (!all.contains(source)) {
      all.add(source);
    }
    return " [" + (all.indexOf(source) + 1) + "]";
  }

  void write(Page page) {
    if (all.isEmpty()) {
      return;
    }
    Page list = new Page();
    for (int i = 0; i < all.size(); i++) {
      list.note("[" + (i + 1) + "] " + all.get(i));
    }
    page.folded("Where the limits come from", list);
  }
}
