package thwartwise.shell;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import thwartwise.advice.Advice;
import thwartwise.advice.Progress;
import thwartwise.archive.NewRecord;
import thwartwise.archive.NewRecord.SavedRecord;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.InspectionProgress;
import thwartwise.inspection.JudgedBoat;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import thwartwise.record.Paper;
import thwartwise.rules.RuleBook;

/** Inspects a boat now, under the given rule sets, and saves the dated record. */
final class Inspector {

  /** The inspection of a boat; a seam for tests of failing inspections. */
  interface Run {
    Report of(Boat boat, RuleBook rules, LocalDate today, InspectionProgress progress);

    /** For callers that save nothing and search no advice. */
    default JudgedBoat judged(Boat boat, RuleBook rules, LocalDate today, Progress progress) {
      return Inspection.judgedWithoutAdvice(
          boat, rules, RuleSetFile.measuringSpreads(), today, progress);
    }

    /** The same for a boat that was changed. */
    default JudgedBoat judged(
        BoatModel changed, RuleBook rules, LocalDate today, Progress progress) {
      return Inspection.judgedWithoutAdvice(
          changed, rules, RuleSetFile.measuringSpreads(), today, progress);
    }
  }

  /** Makes the pages of a record; a seam, because a PDF takes longer than a test should. */
  interface Papers {
    List<Paper> of(InspectionRecord inspection, String number, Optional<Correction> corrects);
  }

  /**
   * The result, and the place of the record.
   *
   * @param warnings files that could not be updated with the record
   */
  record SavedInspection(InspectionRecord inspection, Path path, List<String> warnings) {
    Report report() {
      return inspection.report();
    }
  }

  private final Run run;
  private final Papers papers;
  private final Clock clock;
  private final ProgramVersion version;

  /**
   * The report, without advice, on the boat that was inspected or reported on last: several changes
   * are usually tried on one boat.
   */
  private volatile Map<AsItIs, Report> last = Map.of();

  private record AsItIs(Boat boat, RuleBook rules, LocalDate today) {}

  Inspector(Run run, Papers papers, Clock clock, ProgramVersion version) {
    this.run = run;
    this.papers = papers;
    this.clock = clock;
    this.version = version;
  }

  OffsetDateTime moment() {
    return OffsetDateTime.now(clock).withNano(0);
  }

  LocalDateTime now() {
    return LocalDateTime.now(clock);
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /**
   * Inspects and saves. Nothing is written unless the whole inspection succeeded.
   *
   * @throws java.util.concurrent.CancellationException when Ctrl-C was pressed
   */
  InspectionRecord inspect(Boat boat, Optional<String> by, RuleBook rules) {
    return inspect(boat, by, rules, unread -> {});
  }

  /**
   * The same for a reader who sees the result while advice is searched.
   *
   * @param reader receives the inspection without advice; nothing is saved yet then
   */
  InspectionRecord inspect(
      Boat boat, Optional<String> by, RuleBook rules, Consumer<InspectionRecord> reader) {
    OffsetDateTime now = OffsetDateTime.now(clock).withNano(0);
    String who = by.or(boat::measuredBy).orElse("somebody not named");
    Function<Report, InspectionRecord> record =
        report -> new InspectionRecord(now, who, version.number(), boat, report);
    Report report =
        InterruptibleWork.of(
            "Inspecting",
            line ->
                run.of(
                    boat,
                    rules,
                    now.toLocalDate(),
                    new HeardAnswer(line, early -> reader.accept(record.apply(early)))));
    last = Map.of(new AsItIs(boat, rules, now.toLocalDate()), report.with(Advice.NONE));
    return record.apply(report);
  }

  /** Shows the progress, and passes the first answer on between two updates of that line. */
  record HeardAnswer(ProgressLine line, Consumer<Report> reader) implements InspectionProgress {
    @Override
    public void at(Stage stage, int done, int of) {
      line.at(stage, done, of);
    }

    @Override
    public void carries(int adults) {
      line.showAdults(adults);
    }

    @Override
    public void answered(Report withoutAdvice) {
      line.printBetween(() -> reader.accept(withoutAdvice));
    }
  }

  /** The same judgement by the spread of the measurements, for callers that save nothing. */
  JudgedBoat judged(Boat boat, RuleBook rules, Progress progress) {
    return run.judged(boat, rules, today(), progress);
  }

  /** The same for a boat that was changed. */
  JudgedBoat judged(BoatModel changed, RuleBook rules, Progress progress) {
    return run.judged(changed, rules, today(), progress);
  }

  /** The report on a boat; of the boat inspected or reported on last it is kept. */
  Report report(Boat boat, RuleBook rules, Supplier<Report> work) {
    AsItIs asked = new AsItIs(boat, rules, today());
    Report known = last.get(asked);
    Report report = known != null ? known : work.get();
    last = Map.of(asked, report);
    return report;
  }

  /** A report that is compared and never saved. */
  InspectionRecord unsavedRecord(Boat boat, Report report) {
    OffsetDateTime now = OffsetDateTime.now(clock).withNano(0);
    return new InspectionRecord(now, "", version.number(), boat, report);
  }

  SavedInspection save(InspectionRecord inspection, Workspace workspace) {
    return save(record(inspection), workspace);
  }

  /** The record of an inspection with its pages, to be saved. */
  NewRecord record(InspectionRecord inspection) {
    return record(inspection, () -> {});
  }

  /**
   * The same for a reader who sees the result while the papers are made.
   *
   * @param reader is called before; nothing is saved yet then
   */
  NewRecord record(InspectionRecord inspection, Runnable reader) {
    return NewRecord.of(
        inspection,
        (number, corrects) -> {
          reader.run();
          return InterruptibleWork.of(
              "Setting the pages", () -> papers.of(inspection, number, corrects));
        });
  }

  /**
   * Saves a record with all that belongs to it, or nothing.
   *
   * @throws java.util.concurrent.CancellationException when Ctrl-C was pressed; nothing is saved
   */
  SavedInspection save(NewRecord wanted, Workspace workspace) {
    SavedRecord saved = InterruptibleWork.uninterrupted(() -> workspace.save(wanted));
    return new SavedInspection(wanted.inspection(), saved.file(), saved.warnings());
  }
}
