package thwartwise.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Measure;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Page;
import thwartwise.page.RangeBar;
import thwartwise.page.Sentence;
import thwartwise.page.Table;

/**
 * Every check of the boat, one row each: its figures, their limits and the margins, for the load
 * case that comes nearest to the limit.
 */
final class CheckTable {
  private final Sources sources;
  private final UnitFormat units;
  private final RangeWords ranges;

  private CheckTable(Sources sources, RangeWords ranges) {
    this.sources = sources;
    this.units = ranges.units();
    this.ranges = ranges;
  }

  static void write(Page page, Report report, Sources sources, UnitFormat units) {
    List<Finding> findings = report.findings();
    if (findings.isEmpty()) {
      page.paragraph("No check was made");
      return;
    }
    page.paragraph(
        "Each row shows the loading that comes nearest to the limit",
        report.spread().isPresent()
            ? "The bar holds the figure in 95 of 100 boats measured like this; before the upright,"
                + " the limit, it falls short"
            : "The bar shows the margin that is left",
        "A number in brackets is that of the source, on the last sheet");
    CheckTable table = new CheckTable(sources, new RangeWords(report.spread(), units));
    table
        .of(findings, Role.LIMITS_CREW, "These limit how many may be aboard")
        .ifPresent(page::table);
    table
        .of(findings, Role.FORBIDS_AN_ACT, "These say what nobody does")
        .ifPresent(t -> page.folded("The acts, each with its figures", new Page().table(t)));
    table
        .of(findings, Role.INFORMATION, "For information")
        .ifPresent(t -> page.folded("For information; these limit nothing", new Page().table(t)));
    Page details = table.details(findings);
    if (!details.blocks().isEmpty()) {
      page.screenOnly("Where, and how the boat was loaded", details);
    }
  }

  private Optional<Table> of(List<Finding> findings, Role role, String head) {
    List<Finding> ofRole =
        findings.stream()
            .filter(f -> f.role() == role && f.question().check().hasFigure())
            .toList();
    if (ofRole.isEmpty()) {
      return Optional.empty();
    }
    List<Table.Column> columns =
        ofRole.stream().noneMatch(f -> ranges.of(f).isPresent())
            ? columns(head, 34, 14, 22, 7)
            : role == Role.INFORMATION
                ? columns(head, 40, 11, 17, 12)
                : columns(head, 25, 24, 15, 13);
    return Optional.of(new Table(columns, rows(ofRole).stream().map(this::row).toList(), true));
  }

  private static List<Table.Column> columns(String head, int name, int figure, int limit, int bar) {
    return List.of(
        new Table.Column(head, name),
        new Table.Column("Figure", figure),
        new Table.Column("Limit", limit),
        new Table.Column("Left", bar));
  }

  /** The rows; heel and the freeboard at that heel are one row. */
  private static List<List<Finding>> rows(List<Finding> findings) {
    Map<Object, List<Finding>> rows = new LinkedHashMap<>();
    for (Finding finding : worst(findings)) {
      CheckQuestion question = finding.question();
      Object row = isPair(question) ? List.of(question.check(), question.things()) : question;
      rows.computeIfAbsent(row, r -> new ArrayList<>()).add(finding);
    }
    return List.copyOf(rows.values());
  }

  private static boolean isPair(CheckQuestion question) {
    return (question.measure() == Measure.HEEL || question.measure() == Measure.FREEBOARD)
        && !CheckWords.measure(CheckQuestion.of(question.check(), Measure.FREEBOARD)).isEmpty()
        && CheckWords.measure(CheckQuestion.of(question.check(), Measure.HEEL)).isEmpty();
  }

  /** The answer nearest to its limit, for each question. */
  private static List<Finding> worst(List<Finding> findings) {
    Map<CheckQuestion, Finding> worst = new LinkedHashMap<>();
    findings.forEach(f -> worst.merge(f.question(), f, Finding::worse));
    return List.copyOf(worst.values());
  }

  private List<Table.Cell> row(List<Finding> figures) {
    CheckQuestion first = figures.get(0).question();
    String name = figures.size() > 1 ? CheckWords.subject(first.subject()) : CheckWords.of(first);
    return List.of(
        new Table.Words(Sentence.capital(name)),
        new Table.Words(joined(figures.stream().map(this::figure).toList())),
        new Table.Words(joined(figures.stream().map(this::limit).toList())),
        left(figures));
  }

  private static String joined(List<String> words) {
    return words.stream().collect(Collectors.joining(", "));
  }

  private String limit(Finding finding) {
    return (finding.margin().atLeast() ? "min " : "max ")
        + FindingWords.limit(finding, units)
        + sources.cite(finding.source());
  }

  private String figure(Finding finding) {
    if (finding.margin().turnsOver()) {
      return "rolls over";
    }
    return finding.value().isEmpty() ? "none" : FindingWords.value(finding, units) + range(finding);
  }

  /** The range. For a figure that limits nothing the bar is enough. */
  private String range(Finding finding) {
    return finding.role() == Role.INFORMATION
        ? ""
        : ranges.of(finding).map(f -> " (" + ranges.range(f) + ")").orElse("");
  }

  private Table.Cell left(List<Finding> figures) {
    Outcome outcome = figures.stream().map(Finding::outcome).reduce(Outcome::worse).orElseThrow();
    List<RangeBar> bars =
        figures.stream().flatMap(f -> ranges.of(f).stream()).map(ranges::bar).toList();
    return bars.size() < figures.size()
        ? margin(figures, outcome)
        : new Table.Ranges(word(outcome), bars);
  }

  private static String word(Outcome outcome) {
    return switch (outcome) {
      case MEETS -> "";
      case BORDERLINE -> "close";
      case FALLS_SHORT -> "SHORT";
      case NOT_ASSESSED -> "unknown";
    };
  }

  private static Table.Cell margin(List<Finding> figures, Outcome outcome) {
    return switch (outcome) {
      case MEETS ->
          new Table.Bar(
              figures.stream().map(f -> f.margin().share()).min(Comparator.naturalOrder()).get());
      case BORDERLINE, FALLS_SHORT, NOT_ASSESSED -> new Table.Words(word(outcome));
    };
  }

  private Page details(List<Finding> findings) {
    Page page = new Page();
    for (List<Finding> row : rows(findings)) {
      List<String> words = new ArrayList<>();
      words.add(CheckWords.of(row.get(0).question()));
      row.forEach(
          f -> {
            words.add(LoadCaseWords.deeds(f.loadCase(), units));
            words.add(NoteWords.of(f.note(), units));
          });
      List<String> listed = words.stream().distinct().filter(w -> !w.isBlank()).toList();
      if (listed.size() > 1) {
        page.point(listed.toArray(String[]::new));
      }
    }
    return page;
  }
}
