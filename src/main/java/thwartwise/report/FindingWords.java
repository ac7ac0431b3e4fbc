package thwartwise.report;

import java.util.List;
import thwartwise.checks.Finding;
import thwartwise.checks.Measure;
import thwartwise.checks.Outcome;
import thwartwise.checks.Unit;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Sentence;

/** One finding in sentences: the figure with its limit, and what happens. */
final class FindingWords {
  private FindingWords() {}

  /** The finding with its question. */
  static String of(Finding finding, UnitFormat units) {
    return Sentence.joined(
        List.of(
            CheckWords.of(finding.question()) + ": " + figures(finding, units),
            NoteWords.of(finding.note(), units)));
  }

  /** "Heel 12°, limit 10°". */
  static String figures(Finding finding, UnitFormat units) {
    String limit = "limit " + limit(finding, units);
    if (finding.margin().turnsOver()) {
      return "rolls over, " + limit;
    }
    if (finding.value().isEmpty()) {
      return finding.note().isNone() ? "no figure, " + limit : limit;
    }
    return named(finding) + value(finding, units) + ", " + limit + closeness(finding.outcome());
  }

  private static String named(Finding finding) {
    if (finding.margin().unit() == Unit.DEGREE) {
      return finding.question().measure() == Measure.SWING ? "swings to " : "heel ";
    }
    return finding.question().measure() == Measure.FREEBOARD ? "freeboard " : "";
  }

  private static String closeness(Outcome outcome) {
    return outcome == Outcome.BORDERLINE ? "; tape and scales are too coarse to decide" : "";
  }

  static String value(Finding finding, UnitFormat units) {
    return MarginWords.value(finding.margin(), distinguishing(finding, units));
  }

  /** Figures fine enough that one short of its limit is not shown equal to it. */
  static UnitFormat distinguishing(Finding finding, UnitFormat units) {
    return finding.outcome() == Outcome.MEETS
        ? units
        : MarginWords.distinguishing(finding.margin(), units);
  }

  static String limit(Finding finding, UnitFormat units) {
    return MarginWords.limit(finding.margin(), distinguishing(finding, units));
  }
}
