package thwartwise.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Recommendation;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.record.AnswerChange;
import thwartwise.record.Comparison;
import thwartwise.record.Comparison.BoatChange;

/** The effect of a change that was only tried, in a few lines, and what to type next. */
public final class SupposePage {
  /** The greatest number of answers named; the rest are counted. */
  private static final int MOST = 4;

  private SupposePage() {}

  /**
   * The page.
   *
   * @param tried the boat as it is, and with the change
   * @param deeds the changes to boat and kit
   * @param crew the result of seating the people named
   */
  public static String of(Comparison tried, List<String> deeds, Optional<CrewAnswer> crew) {
    UnitFormat units = ReaderUnits.of(tried.after().boat());
    Recommendation before = tried.before().report().recommendation();
    Recommendation after = tried.after().report().recommendation();
    Page page = new Page().title(tried.after().boat().name() + ", supposed");
    deeds.forEach(page::point);
    counted(tried, units).forEach(page::point);
    page.point(
        crew.map(c -> aboard(c, units)).orElse(new String[] {"Aboard as the boat file has it"}));
    page.gap();
    page.paragraph(
        ComparePage.verdict(tried),
        ComparePage.people(before, after, units),
        ComparePage.amount("People", before.crew(), after.crew(), units),
        ComparePage.amount("In all", before.load(), after.load(), units));
    page.paragraph(ComparisonSummary.dryAndFilled(tried));
    page.paragraph(ComparePage.limitChange(before.governedBy(), after.governedBy()));
    List<String> now = names(tried, SupposePage::fallsShortNow);
    List<String> noLonger = names(tried, SupposePage::noLonger);
    page.paragraph(
        now.isEmpty() && noLonger.isEmpty()
            ? new String[] {"The same checks fall short before and after"}
            : new String[] {
              "Falls short now: " + listed(now), "No longer falls short: " + listed(noLonger)
            });
    return page.paragraph("Only tried: nothing was saved. " + next(deeds), Disclaimer.NO_PLATE)
        .toString();
  }

  /** What a chamber counts for, which the change does not tell. */
  private static List<String> counted(Comparison tried, UnitFormat units) {
    return tried.changes().stream()
        .filter(BoatChange.Counts.class::isInstance)
        .map(change -> ChangeWords.of(change, units))
        .toList();
  }

  private static String[] aboard(CrewAnswer crew, UnitFormat units) {
    String seats =
        "Aboard, where \"seats\" puts them: "
            + Sentence.list(
                crew.seats().stream().map(s -> s.member().name() + " at " + s.place()).toList());
    if (crew.allMayGo()) {
      return new String[] {seats};
    }
    boolean nobody = crew.seats().isEmpty();
    return new String[] {
      (nobody ? "None of these people may go: " : "Not all of these people may go: ")
          + crew.breaks().stream().findFirst().map(r -> RefusalWords.of(r, units)).orElse(""),
      nobody ? "So nobody is aboard here" : seats,
      nobody
          ? ""
          : "Ashore: " + Sentence.list(crew.ashore().stream().map(NamedPerson::name).toList())
    };
  }

  private interface Wanted {
    boolean is(AnswerChange change);
  }

  private static boolean fallsShortNow(AnswerChange change) {
    return change.after().filter(SupposePage::isAgainst).isPresent()
        && change.before().filter(SupposePage::isAgainst).isEmpty();
  }

  private static boolean noLonger(AnswerChange change) {
    return change.before().filter(SupposePage::isAgainst).isPresent()
        && change.after().filter(SupposePage::isAgainst).isEmpty();
  }

  private static boolean isAgainst(Finding finding) {
    return finding.role() != Role.INFORMATION && finding.outcome() != Outcome.MEETS;
  }

  private static List<String> names(Comparison tried, Wanted wanted) {
    return tried.answers().stream()
        .filter(wanted::is)
        .map(
            a ->
                CheckWords.of(a.latest().question())
                    + (a.loading() == Kind.UNNAMED ? "" : ", " + LoadCaseWords.kind(a.loading())))
        .distinct()
        .toList();
  }

  private static String listed(List<String> names) {
    String more = names.size() > MOST ? "; and " + (names.size() - MOST) + " more" : "";
    return names.isEmpty()
        ? "nothing"
        : names.stream().limit(MOST).collect(Collectors.joining("; ")) + more;
  }

  private static String next(List<String> deeds) {
    return deeds.isEmpty()
        ? "Type seats with --people for these people in full"
        : "If you make this change, type refit to record it";
  }
}
