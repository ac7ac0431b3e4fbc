package thwartwise.shell;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.DumbTerminal;
import thwartwise.advice.Progress;
import thwartwise.boat.Boat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.Report;
import thwartwise.report.RecordPapers;
import thwartwise.rules.RuleBook;

/**
 * The run with which the build makes the class data archive: a session at the prompt that uses
 * every kind of work once, so that later starts find those classes ready. It prints nothing.
 */
final class ArchiveTraining {
  private static final List<String> SESSION =
      List.of(
          "version",
          "help walk",
          "demo --folder \"%s\"",
          "records --folder \"%s\"",
          "records check --folder \"%s\"",
          "fleet --folder \"%s\"",
          "quit");

  private ArchiveTraining() {}

  /**
   * Runs the session.
   *
   * @param arguments a folder that may be written to
   */
  public static void main(String[] arguments) throws IOException {
    Main.silenceLogging();
    System.setOut(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
    try (Terminal terminal = typing(String.join("\n", SESSION).replace("%s", arguments[0]))) {
      Commands.of(quickInspector())
          .prompt(Optional.of(terminal), Optional.empty())
          .run(new String[0]);
    }
  }

  private static Terminal typing(String lines) throws IOException {
    return new DumbTerminal(
        new ByteArrayInputStream((lines + "\n").getBytes(StandardCharsets.UTF_8)),
        OutputStream.nullOutputStream());
  }

  private static Inspector quickInspector() {
    return new Inspector(
        ArchiveTraining::inspected,
        RecordPapers::of,
        Clock.systemDefaultZone(),
        ProgramVersion.ofThisJar());
  }

  /**
   * Inspecting a boat with one seat takes a moment, and so does advice where nothing else is
   * aboard.
   */
  private static Report inspected(Boat boat, RuleBook rules, LocalDate today, Progress progress) {
    int last = boat.places().size() - 1;
    Boat seat = boat.withPlaces(boat.places().subList(last, last + 1)).withAboard(List.of());
    Inspection.of(seat.withChambers(List.of()).withKit(List.of()), rules, today, progress);
    return Inspection.judgedWithoutAdvice(
            seat, rules, RuleSetFile.measuringSpreads(), today, progress)
        .report();
  }
}
