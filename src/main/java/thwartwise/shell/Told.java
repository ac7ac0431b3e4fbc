package thwartwise.shell;

import java.io.PrintWriter;
import java.nio.file.Path;
import thwartwise.files.ReportJson;

/** Prints what came of an inspection: the page and where the record lies, or bare JSON. */
final class Told {
  private Told() {}

  static void page(Inspector.Kept kept, PrintWriter out) {
    out.println(kept.page().stripTrailing());
    out.println();
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
