package thwartwise.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The rows of a table as they are pasted, line after line. */
record TablePaste(Conversation conversation) {
  private static final String END = "end";
  private static final String WORD = "table";
  private static final int MOST = 200;

  /**
   * Up to the line that says end, or two empty ones.
   *
   * @param first the line it began with: a row, or the word for a table
   * @return empty when the other side is gone
   */
  Optional<List<String>> rows(String first) {
    List<String> rows = new ArrayList<>();
    if (!first.strip().toLowerCase(Locale.ROOT).equals(WORD)) {
      rows.add(first);
    }
    conversation.print("Paste the rows here; end, or Enter twice, ends the table.");
    while (rows.size() <= MOST) {
      Optional<String> typed = conversation.ask("|");
      if (typed.isEmpty()) {
        return Optional.empty();
      }
      boolean blank = typed.get().isBlank();
      boolean twice = blank && !rows.isEmpty() && rows.get(rows.size() - 1).isBlank();
      if (twice || typed.get().strip().toLowerCase(Locale.ROOT).equals(END)) {
        return Optional.of(rows);
      }
      rows.add(typed.get());
    }
    return Optional.of(rows);
  }
}
