package thwartwise.shell;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.files.Workspace;
import thwartwise.inspection.Report;
import thwartwise.record.Correction;
import thwartwise.record.InspectionRecord;
import thwartwise.report.RecordPapers;
import thwartwise.report.TextPage;
import thwartwise.rules.RuleBook;

/** Inspects a boat as of now, under the rule sets it is handed, and keeps the dated record. */
final class Inspector {

  /** The run over a boat; a seam, so that tests can see what a failing one does. */
  interface Run {
    Report of(Boat boat, RuleBook rules, LocalDate today);
  }

  /** What was found, the page a person prints, and where the record lies. */
  record Kept(InspectionRecord inspection, String page, Path path) {
    Report report() {
      return inspection.report();
    }
  }

  private final Run run;
  private final Clock clock;
  private final ProgramVersion version;

  Inspector(Run run, Clock clock, ProgramVersion version) {
    this.run = run;
    this.clock = clock;
    this.version = version;
  }

  LocalDateTime now() {
    return LocalDateTime.now(clock);
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** Nothing is written unless the whole inspection came through. */
  InspectionRecord inspect(Boat boat, Optional<String> by, RuleBook rules) {
    OffsetDateTime now = OffsetDateTime.now(clock).withNano(0);
    Report report = run.of(boat, rules, now.toLocalDate());
    String who = by.or(boat::measuredBy).orElse("not named");
    return new InspectionRecord(now, who, version.number(), boat, report);
  }

  Kept keep(InspectionRecord inspection, Workspace workspace) {
    return keep(inspection, workspace, Optional.empty());
  }

  /** The same, naming the older record whose place it takes. */
  Kept keep(InspectionRecord inspection, Workspace workspace, Optional<Correction> corrects) {
    Path path =
        workspace.saveRecord(
            inspection, number -> RecordPapers.of(inspection, number, corrects), corrects);
    return new Kept(inspection, TextPage.of(inspection, Beside.number(path), corrects), path);
  }
}
