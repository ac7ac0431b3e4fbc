package thwartwise.report;

import java.util.List;
import thwartwise.page.Page;

/** For which waters the figures hold; it stands before them, so that nobody reads on without it. */
final class WatersSection {
  private WatersSection() {}

  static void write(Page page, List<String> waters) {
    if (waters.isEmpty()) {
      return;
    }
    page.heading("On which waters");
    waters.forEach(page::paragraph);
  }
}
