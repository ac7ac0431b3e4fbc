package thwartwise.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckWords;
import thwartwise.checks.Margin;
import thwartwise.inspection.LimitingFactor;
import thwartwise.inspection.LimitingFactorWords;
import thwartwise.inspection.Recommendation;
import thwartwise.page.FigureText;
import thwartwise.page.HtmlDocument;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.record.Comparison;
import thwartwise.record.InspectionRecord;
import thwartwise.record.KeptRecord;
import thwartwise.record.MarginChange;

/** Two records beside each other, in words: what changed, and what came of it. */
public final class ComparePage {
  private ComparePage() {}

  public static String of(KeptRecord before, KeptRecord after) {
    return page(before, after).toString();
  }

  /** The same as a whole HTML file. */
  public static String html(KeptRecord before, KeptRecord after) {
    return HtmlDocument.of(
        page(before, after), before.handle() + " and " + after.handle(), "page", "");
  }

  private static Page page(KeptRecord before, KeptRecord after) {
    Comparison comparison = Comparison.of(before.inspection(), after.inspection());
    Page page = new Page().title(after.inspection().boat().name() + ": before and after");
    page.paragraph("Before: " + head(before)).paragraph("After: " + head(after));
    cautions(page, before, after, comparison);
    changes(page, comparison);
    outcome(page, comparison);
    AnswersCompared.outcomes(page, comparison.answers());
    margins(page, comparison.margins());
    AnswersCompared.figures(page, comparison.answers());
    return page.gap()
        .paragraph(
            "Each record's own page says for which waters and on what conditions its figures hold",
            Deferral.NO_PLATE,
            Deferral.LAST_WORD);
  }

  private static String head(KeptRecord record) {
    InspectionRecord inspection = record.inspection();
    return record.handle()
        + ", inspected on "
        + Moment.of(inspection.date())
        + " by "
        + (inspection.by().isBlank() ? "somebody not named" : inspection.by());
  }

  private static void cautions(
      Page page, KeptRecord before, KeptRecord after, Comparison comparison) {
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

  private static void changed(Page page, KeptRecord record) {
    if (!record.intact()) {
      page.paragraph(
          record.handle() + " was changed after it was kept: its content does not fit its hash",
          "Do not rely on it");
    }
  }

  private static void changes(Page page, Comparison comparison) {
    page.heading("What changed");
    if (comparison.changes().isEmpty()) {
      page.paragraph("Nothing that was measured or stated");
    }
    comparison.changes().forEach(change -> page.point(ChangeWords.told(change)));
  }

  private static void outcome(Page page, Comparison comparison) {
    Recommendation before = comparison.before().report().recommendation();
    Recommendation after = comparison.after().report().recommendation();
    page.heading("What came of it");
    page.paragraph(verdict(comparison));
    page.paragraph(
        people(before, after), Sentence.joined(steps(before, after)), CauseWords.of(comparison));
    page.paragraph(FallWords.of(comparison));
    page.point(amount("People", before.crew(), after.crew()));
    page.point(amount("People and everything not built in", before.load(), after.load()));
    page.point(amount("Of that besides people and the kit listed", before.extra(), after.extra()));
    page.point(count("It stays up with", before.staysUpWith(), after.staysUpWith()));
    page.point(
        count("When swamped it holds up", before.holdsUpWhenSwamped(), after.holdsUpWhenSwamped()),
        after.heldOnTo() ? "They hold on to it in the water; nobody can sit in it" : "");
    page.point(governed(before.governedBy(), after.governedBy()));
  }

  static String verdict(Comparison comparison) {
    String before = Verdict.of(comparison.before().report()).words();
    String after = Verdict.of(comparison.after().report()).words();
    return before.equals(after)
        ? "Before and after: " + after
        : "Before: " + before + ". After: " + after;
  }

  static String people(Recommendation before, Recommendation after) {
    if (before.withheld() || after.withheld()) {
      return "How many: " + adults(after) + ", before " + adults(before);
    }
    int more = after.people() - before.people();
    if (more == 0) {
      return "As many people as before: " + adults(after);
    }
    return FigureText.people(Math.abs(more))
        + (more < 0 ? " fewer: " : " more: ")
        + adults(after)
        + " instead of "
        + FigureText.adults(before.people());
  }

  /** A step in the number of adults may be next to none in kilograms. */
  private static List<String> steps(Recommendation before, Recommendation after) {
    return before.people() == after.people()
        ? List.of()
        : Stream.of(
                before.nearlyOneMore().map(n -> "Before it " + CrewSection.heads(n) + " could go"),
                after.nearlyOneMore().map(n -> CrewSection.heads(n) + " still may go"))
            .flatMap(Optional::stream)
            .toList();
  }

  private static String adults(Recommendation crew) {
    return crew.withheld()
        ? "nothing recommended"
        : FigureText.adults(crew.people()) + " of " + kg(FigureText.up(crew.adult(), 0));
  }

  static String amount(String what, double before, double after) {
    String was = amount(before);
    String now = amount(after);
    return what
        + ": "
        + (after > 0 ? "up to " : "")
        + now
        + (now.equals(was) ? ", as before" : " instead of " + was);
  }

  private static String amount(double kilograms) {
    return kilograms > 0 ? kg(FigureText.down(kilograms, 0)) : "nothing";
  }

  static String count(String what, int before, int after) {
    return what
        + " "
        + FigureText.adults(after)
        + (before == after ? ", as before" : " instead of " + FigureText.adults(before));
  }

  static String governed(Optional<LimitingFactor> before, Optional<LimitingFactor> after) {
    String now = "What stops the next person: " + governed(after);
    return before.equals(after) ? now + ", as before" : now + "; before: " + governed(before);
  }

  private static String governed(Optional<LimitingFactor> factor) {
    return factor.map(LimitingFactorWords::of).orElse("not said");
  }

  private static void margins(Page page, List<MarginChange> margins) {
    Map<CheckQuestion, String> shown =
        margins.stream()
            .filter(change -> !figure(change.before()).equals(figure(change.after())))
            .collect(
                Collectors.toMap(
                    MarginChange::question, ComparePage::margin, (a, b) -> a, LinkedHashMap::new));
    if (!shown.isEmpty()) {
      page.heading("How near the recommended crew comes to its limits");
      page.paragraph(
          "After the allowance for tape and scales, in the worst seating allowed; each with the"
              + " crew of its own record");
      shown.values().forEach(page::point);
    }
  }

  private static String margin(MarginChange change) {
    Margin latest = change.after().or(change::before).orElseThrow();
    boolean both = change.before().isPresent() && change.after().isPresent();
    return CheckWords.of(change.question())
        + ": "
        + (both
            ? "from " + figure(change.before()) + " to " + figure(change.after())
            : figure(change.before()) + " before, " + figure(change.after()) + " after")
        + "; "
        + (latest.atLeast() ? "at least " : "at most ")
        + MarginWords.limit(latest);
  }

  private static String figure(Optional<Margin> margin) {
    return margin.map(MarginWords::value).orElse("not asked");
  }

  private static String kg(String figure) {
    return FigureText.with(figure, "kg");
  }
}
