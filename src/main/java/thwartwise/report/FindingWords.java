package thwartwise.report;

import java.util.List;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Unit;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;

/** One finding told in sentences: what was asked, how it came out, by how much, under what. */
final class FindingWords {
  private FindingWords() {}

  /** The finding without its loading, which stands above it. */
  static String told(Finding finding, String citation) {
    return Sentence.joined(
        List.of(
            finding.check() + ": " + finding.outcome().word(),
            figures(finding) + citation,
            FindingGroups.deed(finding),
            finding.note()));
  }

  static String figures(Finding finding) {
    String asked =
        finding.atLeast()
            ? "at least " + limit(finding) + " is needed"
            : "at most " + limit(finding) + " is allowed";
    if (turnsOver(finding)) {
      return "It comes to over 90" + FigureText.TIED + "degrees; " + asked;
    }
    return finding.value().isEmpty()
        ? (finding.note().isBlank() ? "There is no figure; " : "") + asked
        : "It comes to " + value(finding) + "; " + asked + closeness(finding.outcome());
  }

  /** Past a right angle the very figure no longer tells anybody anything. */
  static boolean turnsOver(Finding finding) {
    return finding.unit() == Unit.DEGREE && finding.value().orElse(0) > Math.PI / 2;
  }

  private static String closeness(Outcome outcome) {
    return outcome == Outcome.BORDERLINE
        ? ", and the tape and the scales are not fine enough to tell"
        : "";
  }

  static String value(Finding finding) {
    double shown = finding.unit().shown(finding.value().orElse(Double.NaN));
    int decimals = finding.unit().decimals();
    return words(
        finding.atLeast() ? FigureText.down(shown, decimals) : FigureText.up(shown, decimals),
        finding);
  }

  static String limit(Finding finding) {
    double shown = finding.unit().shown(finding.limit());
    int decimals = finding.unit().decimals();
    return words(
        finding.atLeast() ? FigureText.up(shown, decimals) : FigureText.down(shown, decimals),
        finding);
  }

  private static String words(String figure, Finding finding) {
    String word = finding.unit().word();
    boolean one = figure.equals("1") && word.endsWith("s");
    return FigureText.with(figure, one ? word.substring(0, word.length() - 1) : word);
  }
}
