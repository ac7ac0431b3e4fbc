package thwartwise.shell;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import thwartwise.files.ReportJson;
import thwartwise.record.Printable;
import thwartwise.report.RecordPapers;
import thwartwise.report.Summary;

/** Prints what came of an inspection: the page and where the record lies, or bare JSON. */
final class Told {
  /** Before what could not be brought up to date with a record that is kept. */
  static final String NOTE = "Note: ";

  private static final String NO_PDF =
      "no PDF could be made on this machine; print the HTML page from a browser instead";

  private Told() {}

  /**
   * Keeps an inspection and prints what was asked for.
   *
   * @param keep keeps it, and gives the page to its reader before the papers are set
   */
  static Inspector.Kept keeping(Given given, Function<Consumer<String>, Inspector.Kept> keep) {
    PrintWriter out = given.context().outputWriter();
    if (!given.has(OptionWord.JSON)) {
      return page(keep, out);
    }
    Inspector.Kept kept = keep.apply(unread -> {});
    json(kept, out);
    return kept;
  }

  /** The page at once, so that nobody waits for its papers; then what lies where. */
  static Inspector.Kept page(Function<Consumer<String>, Inspector.Kept> keep, PrintWriter out) {
    PageOnScreen page = new PageOnScreen(out);
    Inspector.Kept kept = keep.apply(page::print);
    // An inspection that was kept a moment ago already has its papers.
    page.print(kept.page());
    files(kept, out);
    return kept;
  }

  /** One screen, where everything is kept, and what to do next. */
  static void summary(Inspector.Kept kept, Path boat, PrintWriter out) {
    out.println(Summary.of(kept.inspection()).stripTrailing());
    out.println();
    files(kept, out);
    file("Boat:   ", boat, out);
    out.println();
    out.println("Next: read the whole page, do what is to be done first, change it in the boat");
    out.println("file, and type inspect --boat with that file. Before going out: today --boat.");
  }

  private static void files(Inspector.Kept kept, PrintWriter out) {
    kept.warnings().forEach(warning -> out.println(NOTE + Printable.of(warning)));
    file("Record: ", kept.path(), out);
    beside(kept.path(), "Page:", "", out);
    beside(kept.path(), "Card:", RecordPapers.CARD, out);
  }

  /** A name of a folder can carry what a terminal would take for an order. */
  static void file(String label, Path file, PrintWriter out) {
    out.println(label + Printable.of(file.toString()));
  }

  /** Nothing else may stand on standard output: another program reads it. */
  private static void json(Inspector.Kept kept, PrintWriter out) {
    out.println(ReportJson.write(kept.report()).stripTrailing());
  }

  /** The forms of one page, one a line. */
  private static void beside(Path record, String label, String kind, PrintWriter out) {
    String before = label;
    for (String form : List.of(RecordPapers.TEXT, RecordPapers.HTML, RecordPapers.PDF)) {
      out.printf("%-8s%s%n", before, named(Beside.paper(record, kind + form)));
      before = "";
    }
  }

  private static String named(Path paper) {
    return Files.exists(paper) ? Printable.of(paper.toString()) : NO_PDF;
  }
}
