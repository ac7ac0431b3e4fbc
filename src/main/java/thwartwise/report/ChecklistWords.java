package thwartwise.report;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Note;
import thwartwise.measure.UnitFormat;
import thwartwise.record.InspectionRecord;

/** A fault in brief: the thing and what was seen. */
final class ChecklistWords {
  private ChecklistWords() {}

  /** What was seen; if nobody wrote it down, the requirement. */
  static String of(PointAnswer answer) {
    return seen(answer.note(), answer.requirement(), answer.itemOrSystem());
  }

  /** The same for a finding: a point of a checklist, or of battery, panel and wires. */
  static String of(Finding finding) {
    CheckQuestion question = finding.question();
    return switch (question.check()) {
      case BATTERY_COVERED -> "the battery's terminals are bare";
      case BATTERY_HELD -> "nothing holds the battery when the boat goes over";
      case PANEL_FUSED -> "no fuse on one side of the panel's controller";
      case CIRCUIT_GUARDED -> unguarded(finding.note()) + " (" + CheckWords.of(question) + ")";
      default -> seen(NoteWords.of(finding.note(), UnitFormat.METRIC), question.things());
    };
  }

  private static String unguarded(Note note) {
    return note instanceof Note.UnguardedCircuit circuit
        ? WiringFaultWords.brief(circuit.fault())
        : "not as it should be";
  }

  private static String seen(String note, List<String> things) {
    return seen(note, things.get(0), things.size() > 1 ? things.get(1) : "");
  }

  private static String seen(String note, String must, String thing) {
    return (note.isBlank() ? "it is not so: " + must : note)
        + (thing.isBlank() ? "" : " (" + thing + ")");
  }

  /** The faults that must be corrected before anybody goes, gravest first. */
  static List<String> toPutRight(InspectionRecord inspection) {
    Stream<String> looked =
        Stream.of(PointGravity.HOLDS_THE_LAUNCH, PointGravity.PUT_RIGHT_FIRST)
            .flatMap(
                gravity ->
                    inspection.boat().pointAnswers().stream()
                        .filter(PointAnswer::isGrave)
                        .filter(answer -> answer.gravity() == gravity))
            .map(ChecklistWords::of);
    Stream<String> electrical =
        inspection.report().findings().stream()
            .filter(ChecklistWords::isElectrical)
            .map(ChecklistWords::of);
    Stream<String> leaks =
        inspection.report().findings().stream()
            .filter(Finding::holdsBack)
            .flatMap(finding -> leak(finding.note()))
            .distinct();
    return Stream.of(looked, leaks, electrical)
        .flatMap(words -> words)
        .map(words -> "Put right: " + words)
        .toList();
  }

  /** Seams that leaked too much while somebody watched them. */
  private static Stream<String> leak(Note note) {
    return note instanceof Note.SeamsLeak leak
        ? Stream.of("the leaking seams, most of all the " + leak.worst())
        : Stream.of();
  }

  private static boolean isElectrical(Finding finding) {
    CheckId check = finding.question().check();
    return !check.hasFigure() && check != CheckId.LOOKED_AT;
  }
}
