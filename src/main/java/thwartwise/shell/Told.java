package thwartwise.shell;

import java.io.PrintWriter;
import java.nio.file.Path;
import thwartwise.files.ReportJson;
import thwartwise.report.Summary;

/** Prints what came of an inspection: the page and where the record lies, or bare JSON. */
final class Told {
  private Told() {}

  static void page(Inspector.Kept kept, PrintWriter out) {
    out.println(kept.page().stripTrailing());
    out.println();
    files(kept, out);
  }

  /** One screen, where everything is kept, and what to do next. */
  static void summary(Inspector.Kept kept, Path boat, PrintWriter out) {
    out.println(Summary.of(kept.inspection()).stripTrailing());
    out.println();
    files(kept, out);
    out.println("Boat:   " + boat);
    out.println();
    out.println("Next: read the whole page, do what is to be done first, change it in the boat");
    out.println("file, and type inspect --boat with that file. Before going out: today --boat.");
  }

  private static void files(Inspector.Kept kept, PrintWriter out) {
    out.println("Record: " + kept.path());
    out.println("Page:   " + pageBeside(kept.path()));
  }

  /** Nothing else may stand on standard output: another program reads it. */
  static void json(Inspector.Kept kept, PrintWriter out) {
    out.println(ReportJson.write(kept.report()).stripTrailing());
  }

  private static Path pageBeside(Path path) {
    return path.resolveSibling(path.getFileName().toString().replaceFirst("\\.json$", ".txt"));
  }
}
