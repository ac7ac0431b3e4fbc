package thwartwise.shell;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import thwartwise.archive.Workspace;
import thwartwise.files.report.ReportJson;
import thwartwise.measure.PrintableText;
import thwartwise.measure.UnitFormat;
import thwartwise.page.LineWrap;
import thwartwise.record.InspectionRecord;
import thwartwise.report.RecordPapers;
import thwartwise.report.Screen;

/** Prints the result of an inspection: one screen and the place of the record, or bare JSON. */
final class InspectionOutput {
  private static final String ENDING = ".json";

  /** The beginning of a line about a file that could not be updated with a saved record. */
  static final String NOTE = "Note: ";

  private static final String NO_PDF =
      "no PDF could be made here; print the HTML page from a browser instead";
  private static final String RECORD = "Record: ";
  private static final String NEXT = "Next:   ";

  private final CommandInput given;
  private final Workspace workspace;
  private final PrintWriter out;
  private boolean printed;

  /** The number of screen lines that were printed while advice was being searched. */
  private int early;

  private InspectionOutput(CommandInput given) {
    this.given = given;
    this.workspace = given.workspace();
    this.out = given.context().outputWriter();
  }

  /**
   * Saves an inspection and prints what was asked for.
   *
   * @param keep saves it, and calls its reader before the papers are made, so that nobody waits for
   *     them
   */
  static Inspector.SavedInspection keeping(
      CommandInput given,
      InspectionRecord inspection,
      Function<Runnable, Inspector.SavedInspection> keep) {
    if (given.has(OptionWord.JSON)) {
      Inspector.SavedInspection kept = keep.apply(() -> {});
      // Nothing else may stand on standard output, because another program reads it.
      given
          .context()
          .outputWriter()
          .println(
              ReportJson.write(kept.report(), new UnitFormat(kept.inspection().boat().units()))
                  .stripTrailing());
      return kept;
    }
    return new InspectionOutput(given).keeping(inspection, keep);
  }

  /**
   * Inspects and saves, and prints the lines that advice does not change while advice is being
   * searched.
   *
   * @param inspect hands the inspection without advice to its reader
   * @param keep as for {@link #keeping}
   */
  static Inspector.SavedInspection inspecting(
      CommandInput given,
      Function<Consumer<InspectionRecord>, InspectionRecord> inspect,
      BiFunction<InspectionRecord, Runnable, Inspector.SavedInspection> keep) {
    InspectionOutput output = new InspectionOutput(given);
    boolean read = !given.has(OptionWord.JSON);
    InspectionRecord inspection = inspect.apply(read ? output::withoutAdvice : unread -> {});
    return read
        ? output.keeping(inspection, reader -> keep.apply(inspection, reader))
        : keeping(given, inspection, reader -> keep.apply(inspection, reader));
  }

  private Inspector.SavedInspection keeping(
      InspectionRecord inspection, Function<Runnable, Inspector.SavedInspection> keep) {
    Inspector.SavedInspection kept = keep.apply(() -> screen(inspection));
    all(kept);
    return kept;
  }

  /** The lines of the screen that advice does not change, while it is being searched. */
  private void withoutAdvice(InspectionRecord inspection) {
    List<String> lines = Screen.withoutAdvice(inspection, Screen.ROWS - footRows(inspection));
    lines.forEach(out::println);
    out.flush();
    early = lines.size();
  }

  /** One screen, the places of the files, and what to do next. */
  static void printSaved(Inspector.SavedInspection kept, CommandInput given) {
    new InspectionOutput(given).all(kept);
  }

  private void all(Inspector.SavedInspection kept) {
    // The papers of an inspection that was saved a moment ago are not made again.
    screen(kept.inspection());
    kept.warnings().forEach(warning -> out.println(NOTE + PrintableText.of(warning)));
    if (!Files.exists(paper(kept.path(), RecordPapers.PDF))) {
      out.println(NOTE + NO_PDF);
    }
    file(RECORD, kept.path());
    Path boat = boat(kept.inspection());
    next(Files.exists(boat)).forEach(out::println);
  }

  private void screen(InspectionRecord inspection) {
    if (!printed) {
      Screen.of(inspection, Screen.ROWS - footRows(inspection)).stream()
          .skip(early)
          .forEach(out::println);
      out.flush();
      printed = true;
    }
  }

  /** The lines under the screen. No path is broken, so a long one takes more than one row. */
  private int footRows(InspectionRecord inspection) {
    Path boat = boat(inspection);
    Path record =
        workspace
            .folder()
            .resolve("records")
            .resolve(recordNumber(boat))
            .resolve("2026-01-01T000000-00000000.json");
    return rows(RECORD + CommandInput.toHome(record)) + next(true).size();
  }

  private static int rows(String line) {
    return (line.length() + Screen.COLUMNS - 1) / Screen.COLUMNS;
  }

  private Path boat(InspectionRecord inspection) {
    return workspace.boatPath(inspection.boat().name());
  }

  private List<String> next(boolean ours) {
    String same = given.has(OptionWord.FOLDER) ? " (with the same --folder)" : "";
    String words =
        "Type page for the whole page"
            + (ours ? ", refit after a change, today before going out" : "")
            + same
            + ". Page and card are next to the record."
            + (ours ? "" : " Inspect again after any change.");
    return LineWrap.lines(words, NEXT, " ".repeat(NEXT.length()), Screen.COLUMNS);
  }

  /** The name of a file; a folder's name can contain what a terminal would obey. */
  private void file(String label, Path file) {
    out.println(label + PrintableText.of(CommandInput.toHome(file)));
  }

  /** The number of the record in that file. */
  static String recordNumber(Path record) {
    String file = record.getFileName().toString();
    return file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
  }

  static Path paper(Path record, String ending) {
    return record.resolveSibling(recordNumber(record) + ending);
  }
}
