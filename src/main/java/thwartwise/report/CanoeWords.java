package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.inspection.Report;

/**
 * What a canoe, or another boat that is held on to when it is swamped, asks of its crew; nothing of
 * other boats.
 */
final class CanoeWords {
  private CanoeWords() {}

  static List<String> of(Report report) {
    List<String> words = new ArrayList<>();
    if (report.findings().stream().anyMatch(f -> f.question().check() == CheckId.SITTING_UP)) {
      words.add("The figures are of people who kneel on the floor, as in a canoe");
    }
    if (report.recommendation().heldOnTo()) {
      words.add("Nobody can sit in it when it is swamped: it is held on to from the water");
    }
    if (report.findings().stream().anyMatch(CanoeWords::tips)) {
      words.add(
          "Somebody who sits stiff, asleep or frightened, a hand's breadth off the middle can tip"
              + " it");
    }
    return words;
  }

  /** Of a boat that is no canoe it limits the crew instead. */
  private static boolean tips(Finding finding) {
    return finding.role() == Role.FORBIDS_AN_ACT
        && finding.question().check() == CheckId.STIFF_OFF_THE_MIDDLE
        && finding.outcome() != Outcome.MEETS;
  }
}
