package thwartwise.report;

import java.util.List;
import thwartwise.checks.CheckWords;
import thwartwise.checks.Finding;
import thwartwise.checks.LoadCaseWords;
import thwartwise.checks.Outcome;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;

/** One finding told in sentences: what was asked, how it came out, by how much, under what. */
final class FindingWords {
  private FindingWords() {}

  /** The finding without its loading, which stands above it. */
  static String told(Finding finding, String citation) {
    return Sentence.joined(
        List.of(
            CheckWords.of(finding.question()) + ": " + finding.outcome().word(),
            figures(finding) + citation,
            LoadCaseWords.deeds(finding.loadCase()),
            finding.note()));
  }

  static String figures(Finding finding) {
    String asked =
        finding.margin().atLeast()
            ? "at least " + limit(finding) + " is needed"
            : "at most " + limit(finding) + " is allowed";
    if (finding.margin().turnsOver()) {
      return "It comes to over 90" + FigureText.TIED + "degrees; " + asked;
    }
    return finding.value().isEmpty()
        ? (finding.note().isBlank() ? "There is no figure; " : "") + asked
        : "It comes to " + value(finding) + "; " + asked + closeness(finding.outcome());
  }

  private static String closeness(Outcome outcome) {
    return outcome == Outcome.BORDERLINE
        ? ", and the tape and the scales are not fine enough to tell"
        : "";
  }

  static String value(Finding finding) {
    return MarginWords.value(finding.margin());
  }

  static String limit(Finding finding) {
    return MarginWords.limit(finding.margin());
  }
}
