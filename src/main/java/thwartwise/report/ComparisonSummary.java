package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.crew.Recommendation;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.record.Comparison;
import thwartwise.record.RecordEntry;

/** The cost or gain of a change, before any figure: three lines, and each consequence by name. */
public final class ComparisonSummary {
  private static final String NOT_WORKED_OUT = "not worked out";

  private final Report before;
  private final Report after;
  private final UnitFormat units;

  private ComparisonSummary(Comparison comparison) {
    this.before = comparison.before().report();
    this.after = comparison.after().report();
    this.units = ReaderUnits.of(comparison.after().boat());
  }

  /** The summary alone, with a pointer to the rest. */
  public static String of(RecordEntry before, RecordEntry after) {
    Page page = new Page();
    write(page, Comparison.of(before.inspection(), after.inspection()));
    return page.paragraph("Every figure: compare " + before.handle() + ' ' + after.handle())
        .toString();
  }

  static void write(Page page, Comparison comparison) {
    ComparisonSummary summary = new ComparisonSummary(comparison);
    page.paragraph("In short: " + summary.gains());
    page.paragraph(dryAndFilled(comparison));
    page.points(summary.chambers());
    page.points(summary.acts());
  }

  private String gains() {
    Recommendation was = before.recommendation();
    Recommendation now = after.recommendation();
    if (was.withheld() || now.withheld()) {
      return Verdict.of(before) == Verdict.of(after)
          ? "nothing is recommended, before or after"
          : "before: " + Verdict.of(before).words() + "; now: " + Verdict.of(after).words();
    }
    List<String> bought = new ArrayList<>();
    List<String> cost = new ArrayList<>();
    int adults = now.people() - was.people();
    if (adults != 0) {
      (adults > 0 ? bought : cost).add(FigureText.adults(Math.abs(adults)));
    }
    mass(was.crew(), now.crew(), "of people", bought, cost);
    mass(was.load(), now.load(), "in all", bought, cost);
    List<String> all = new ArrayList<>();
    if (!bought.isEmpty()) {
      all.add("it bought " + Sentence.list(bought));
    }
    if (!cost.isEmpty()) {
      all.add("it cost " + Sentence.list(cost));
    }
    return all.isEmpty() ? "as many people and as much weight as before" : String.join("; ", all);
  }

  private void mass(double was, double now, String of, List<String> bought, List<String> cost) {
    double difference = Math.floor(now) - Math.floor(was);
    if (difference > 0) {
      bought.add(units.mass(difference, Side.DOWN) + " " + of);
    } else if (difference < 0) {
      cost.add(units.mass(-difference, Side.UP) + " " + of);
    }
  }

  /** How many people the boat carries dry and swamped, now and before. */
  static String[] dryAndFilled(Comparison comparison) {
    Recommendation was = comparison.before().report().recommendation();
    Recommendation now = comparison.after().report().recommendation();
    return new String[] {
      "Dry, it stays up with " + step(was, now, crew -> FigureText.adults(crew.staysUpWith())),
      "Full of water, it holds up " + step(was, now, CrewWords::heldUp)
    };
  }

  /** The step in people; an answer withheld without a search has no figure. */
  private static String step(
      Recommendation was, Recommendation now, Function<Recommendation, String> figure) {
    String before = was.wasSearched() ? figure.apply(was) : NOT_WORKED_OUT;
    String after = now.wasSearched() ? figure.apply(now) : NOT_WORKED_OUT;
    return after + (before.equals(after) ? ", as before" : ", before " + before);
  }

  /** Chambers that no longer count, or count now. */
  private List<String> chambers() {
    Map<String, ChamberFigures> were = byName(before);
    List<String> words = new ArrayList<>();
    byName(after)
        .forEach(
            (name, now) -> {
              ChamberFigures was = were.remove(name);
              if (was != null && was.counted() != now.counted()) {
                words.add(
                    name
                        + ": its "
                        + units.volume(
                            was.counted() ? was.countedVolume() : now.countedVolume(), Side.DOWN)
                        + (now.counted()
                            ? " count now"
                            : " no longer count: " + BuoyancyReasonWords.of(now.why(), units)));
              }
            });
    were.values().stream()
        .filter(ChamberFigures::counted)
        .forEach(
            was ->
                words.add(
                    was.name()
                        + ": its "
                        + units.volume(was.countedVolume(), Side.DOWN)
                        + " are gone"));
    return words;
  }

  private static Map<String, ChamberFigures> byName(Report report) {
    return report.chambers().stream()
        .collect(Collectors.toMap(ChamberFigures::name, c -> c, (a, b) -> a, TreeMap::new));
  }

  /** Acts that are forbidden now and were not before, and the other way round. */
  private List<String> acts() {
    Set<Subject> were = forbidden(before);
    Set<Subject> are = forbidden(after);
    List<String> words = new ArrayList<>();
    Set<Subject> fresh = new TreeSet<>(are);
    fresh.removeAll(were);
    if (!fresh.isEmpty()) {
      words.add("Forbidden now: " + listed(fresh));
    }
    were.removeAll(are);
    // An act that was not assessed again is not within anything.
    were.retainAll(asked(after));
    if (!were.isEmpty()) {
      words.add("Within the limits now: " + listed(were));
    }
    return words;
  }

  private static String listed(Set<Subject> acts) {
    return Sentence.list(acts.stream().map(CheckWords::subject).toList());
  }

  private static Set<Subject> forbidden(Report report) {
    return acts(report, f -> f.outcome() != Outcome.MEETS);
  }

  private static Set<Subject> asked(Report report) {
    return acts(report, f -> true);
  }

  private static Set<Subject> acts(Report report, Predicate<Finding> of) {
    return report.findings().stream()
        .filter(f -> f.role() == Role.FORBIDS_AN_ACT)
        .filter(of)
        .map(f -> f.question().subject())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
