package thwartwise.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Margin;
import thwartwise.crew.LimitingFactor;
import thwartwise.crew.Recommendation;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.HtmlDocument;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.record.Comparison;
import thwartwise.record.Comparison.MarginChange;
import thwartwise.record.InspectionRecord;
import thwartwise.record.RecordEntry;

/** Two records compared, in words: what changed, and its consequences. */
public final class ComparePage {
  private ComparePage() {}

  public static String of(RecordEntry before, RecordEntry after) {
    return page(before, after).toString();
  }

  /** The same as a whole HTML file. */
  public static String html(RecordEntry before, RecordEntry after) {
    return HtmlDocument.of(
        page(before, after), before.handle() + " and " + after.handle(), "page", "");
  }

  private static Page page(RecordEntry before, RecordEntry after) {
    Comparison comparison = Comparison.of(before.inspection(), after.inspection());
    UnitFormat units = ReaderUnits.of(after.inspection().boat());
    Page page = new Page().title(after.inspection().boat().name() + ": before and after");
    page.paragraph("Before: " + head(before)).paragraph("After: " + head(after));
    cautions(page, before, after, comparison);
    page.gap();
    ComparisonSummary.write(page, comparison);
    changes(page, comparison, units);
    outcome(page, comparison, units);
    AnswerComparison.outcomes(page, comparison.answers(), units);
    margins(page, comparison.margins(), units);
    AnswerComparison.figures(page, comparison.answers(), units);
    return page.gap()
        .paragraph(
            "The page of each record says for which waters and conditions its figures hold",
            Disclaimer.NO_PLATE,
            Disclaimer.LAST_WORD);
  }

  private static String head(RecordEntry record) {
    InspectionRecord inspection = record.inspection();
    return record.handle()
        + ", inspected on "
        + TimestampText.of(inspection.date())
        + " by "
        + (inspection.by().isBlank() ? "somebody not named" : inspection.by());
  }

  private static void cautions(
      Page page, RecordEntry before, RecordEntry after, Comparison comparison) {
    if (!comparison.sameBoat()) {
      page.paragraph(
          "These are two boats: "
              + before.inspection().boat().name()
              + " and "
              + after.inspection().boat().name());
    }
    if (after.inspection().date().isBefore(before.inspection().date())) {
      page.paragraph("The record named first is the younger of the two");
    }
    changed(page, before);
    changed(page, after);
  }

  private static void changed(Page page, RecordEntry record) {
    if (!record.intact()) {
      page.paragraph(
          record.handle() + " was changed after it was saved: its content does not match its hash",
          "Do not rely on it");
    }
  }

  private static void changes(Page page, Comparison comparison, UnitFormat units) {
    page.heading("What changed");
    if (comparison.changes().isEmpty()) {
      page.paragraph("Nothing that was measured or stated");
    }
    comparison.changes().forEach(change -> page.point(ChangeWords.of(change, units)));
  }

  private static void outcome(Page page, Comparison comparison, UnitFormat units) {
    Recommendation before = comparison.before().report().recommendation();
    Recommendation after = comparison.after().report().recommendation();
    page.heading("Result");
    page.paragraph(verdict(comparison));
    page.paragraph(
        people(before, after, units),
        Sentence.joined(steps(before, after, units)),
        CauseWords.of(comparison, units));
    page.paragraph(DecreaseWords.of(comparison));
    page.point(amount("People", before.crew(), after.crew(), units));
    page.point(amount("People and everything not built in", before.load(), after.load(), units));
    page.point(
        amount("Extra weight besides people and listed kit", before.extra(), after.extra(), units));
    if (after.heldOnTo()) {
      page.point("Full of water, it carries nobody inside: people hold on to it from the water");
    }
    page.point(limitChange(before.governedBy(), after.governedBy()));
  }

  static String verdict(Comparison comparison) {
    String before = Verdict.of(comparison.before().report()).words();
    String after = Verdict.of(comparison.after().report()).words();
    return before.equals(after)
        ? "Before and after: " + after
        : "Before: " + before + ". After: " + after;
  }

  static String people(Recommendation before, Recommendation after, UnitFormat units) {
    if (before.withheld() || after.withheld()) {
      return "How many: " + adults(after, units) + ", before " + adults(before, units);
    }
    int more = after.people() - before.people();
    if (more == 0) {
      return "As many people as before: " + adults(after, units);
    }
    return FigureText.people(Math.abs(more))
        + (more < 0 ? " fewer: " : " more: ")
        + adults(after, units)
        + " instead of "
        + FigureText.adults(before.people());
  }

  /** A step in the number of adults may be only a few kilograms. */
  private static List<String> steps(Recommendation before, Recommendation after, UnitFormat units) {
    return before.people() == after.people()
        ? List.of()
        : Stream.of(
                before
                    .nearlyOneMore()
                    .map(n -> "Before it " + CrewWords.heads(n, units) + " could go"),
                after.nearlyOneMore().map(n -> CrewWords.heads(n, units) + " still may go"))
            .flatMap(Optional::stream)
            .toList();
  }

  private static String adults(Recommendation crew, UnitFormat units) {
    return crew.withheld()
        ? "nothing recommended"
        : FigureText.adults(crew.people()) + " of " + units.mass(crew.adult(), Side.UP);
  }

  static String amount(String what, double before, double after, UnitFormat units) {
    String was = amount(before, units);
    String now = amount(after, units);
    return what
        + ": "
        + (after > 0 ? "up to " : "")
        + now
        + (now.equals(was) ? ", as before" : " instead of " + was);
  }

  private static String amount(double kilograms, UnitFormat units) {
    return kilograms > 0 ? units.mass(kilograms, Side.DOWN) : "nothing";
  }

  static String limitChange(Optional<LimitingFactor> before, Optional<LimitingFactor> after) {
    String now = "What stops the next person: " + limitChange(after);
    return before.equals(after) ? now + ", as before" : now + "; before: " + limitChange(before);
  }

  private static String limitChange(Optional<LimitingFactor> factor) {
    return factor.map(LimitingFactorWords::of).orElse("not said");
  }

  private static void margins(Page page, List<MarginChange> margins, UnitFormat units) {
    Map<CheckQuestion, String> shown =
        margins.stream()
            .filter(
                change ->
                    !figure(change, change.before(), units)
                        .equals(figure(change, change.after(), units)))
            .collect(
                Collectors.toMap(
                    MarginChange::question,
                    change -> margin(change, units),
                    (a, b) -> a,
                    LinkedHashMap::new));
    if (!shown.isEmpty()) {
      page.heading("Margins of the recommended crew");
      page.paragraph(
          "After the allowance for tape and scales, in the worst seating allowed; each with the"
              + " crew of its own record");
      shown.values().forEach(page::point);
    }
  }

  private static String margin(MarginChange change, UnitFormat units) {
    Margin latest = change.after().or(change::before).orElseThrow();
    boolean both = change.before().isPresent() && change.after().isPresent();
    return CheckWords.of(change.question())
        + ": "
        + (both
            ? "from "
                + figure(change, change.before(), units)
                + " to "
                + figure(change, change.after(), units)
            : figure(change, change.before(), units)
                + " before, "
                + figure(change, change.after(), units)
                + " after")
        + "; "
        + (latest.atLeast() ? "at least " : "at most ")
        + MarginWords.limit(latest, units);
  }

  private static String figure(MarginChange change, Optional<Margin> margin, UnitFormat units) {
    return margin
        .map(m -> MarginWords.ofTheWater(change.question().measure(), m, units))
        .orElse("not asked");
  }
}
