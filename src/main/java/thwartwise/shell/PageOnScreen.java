package thwartwise.shell;

import java.io.PrintWriter;

/** The page of an inspection, printed once, as soon as it is there. */
final class PageOnScreen {
  private final PrintWriter out;
  private boolean printed;

  PageOnScreen(PrintWriter out) {
    this.out = out;
  }

  void print(String page) {
    if (!printed) {
      out.println(page.stripTrailing());
      out.println();
      out.flush();
      printed = true;
    }
  }
}
