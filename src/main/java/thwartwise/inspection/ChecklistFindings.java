package thwartwise.inspection;

import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.PointAnswer;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.checks.Role;

/**
 * Findings for faults at points of a checklist that must be corrected first. A point that holds the
 * launch is a refusal, not a finding.
 */
final class ChecklistFindings {
  private ChecklistFindings() {}

  static List<Finding> of(Boat boat) {
    return boat.pointAnswers().stream()
        .filter(PointAnswer::isGrave)
        .filter(answer -> !answer.holdsTheLaunch())
        .map(ChecklistFindings::finding)
        .toList();
  }

  private static Finding finding(PointAnswer answer) {
    return Finding.failed(
        new CheckQuestion(CheckId.LOOKED_AT, Measure.AS_MEASURED, things(answer)),
        answer.by() + " looked on " + answer.date(),
        Note.stated(answer.note()));
  }

  /** The requirement, and its thing. */
  private static List<String> things(PointAnswer answer) {
    return List.of(answer.requirement(), answer.itemOrSystem());
  }

  /**
   * A drain with an untied bung and a measured leak limit the crew by their minutes instead of only
   * informing.
   */
  static Finding counted(Finding finding, Boat boat) {
    CheckId check = finding.question().check();
    boolean lost =
        check == CheckId.DRAIN_OPEN
            && BoatFact.bungsLost(boat).contains(finding.question().things().get(0));
    return lost || check == CheckId.LEAK_UNDER_WAY ? finding.withRole(Role.LIMITS_CREW) : finding;
  }
}
