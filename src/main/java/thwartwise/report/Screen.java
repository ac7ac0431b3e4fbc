package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.crew.Recommendation;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.LineWrap;
import thwartwise.page.Sentence;
import thwartwise.page.TextForm;
import thwartwise.record.InspectionRecord;

/**
 * The answer of an inspection on one screen: whether the boat may go, how many and how much, seats,
 * dry and swamped, what is wrong, what to do first, what nobody may do. What does not fit is
 * shortened, and stands on the page in full.
 */
public final class Screen {
  /** The rows of a terminal when it opens. */
  public static final int ROWS = 24;

  public static final int COLUMNS = TextForm.WIDTH;
  private static final String LIFE_JACKETS = "Life jackets on; try it in knee-deep water first";
  private static final String LOCAL_RULES = "Local rules come first";
  private static final int LONGEST_NAME = 40;

  /** The forms from the longest to the shortest; the first that fits is taken. */
  private static final List<ScreenDetail> DETAILS =
      List.of(
          new ScreenDetail(9, 2, 3, true, true, 3, 9),
          new ScreenDetail(5, 1, 3, true, true, 3, 9),
          new ScreenDetail(4, 1, 3, false, true, 3, 9),
          new ScreenDetail(4, 1, 3, false, true, 2, 6),
          new ScreenDetail(4, 1, 3, false, false, 2, 5),
          new ScreenDetail(3, 1, 3, false, false, 2, 4),
          new ScreenDetail(3, 1, 3, false, false, 1, 3),
          new ScreenDetail(3, 1, 2, false, false, 1, 3),
          new ScreenDetail(3, 1, 2, false, false, 1, 1),
          new ScreenDetail(2, 1, 2, false, false, 1, 1),
          new ScreenDetail(2, 1, 1, false, false, 1, 1),
          new ScreenDetail(2, 0, 1, false, false, 1, 1));

  private final InspectionRecord inspection;
  private final Report report;
  private final ScreenDetail detail;
  private final UnitFormat units;
  private final ScreenLines lines = new ScreenLines();

  private Screen(InspectionRecord inspection, ScreenDetail detail) {
    this.inspection = inspection;
    this.report = inspection.report();
    this.detail = detail;
    this.units = ReaderUnits.of(inspection.boat());
  }

  /**
   * The screen.
   *
   * @param rows that it may take
   * @return lines of at most 80 columns, in as few rows as its shortest form takes where even that
   *     is too long
   */
  public static List<String> of(InspectionRecord inspection, int rows) {
    List<String> lines = List.of();
    for (ScreenDetail detail : DETAILS) {
      lines = new Screen(inspection, detail).lines();
      if (lines.size() <= rows) {
        return lines;
      }
    }
    return lines;
  }

  /**
   * The first lines of the screen: those that stay whatever advice is found, in each of its forms.
   *
   * @param withoutAdvice an inspection for which advice is still searched
   * @param rows as for {@link #of}; a form that takes more without advice does with it
   */
  public static List<String> withoutAdvice(InspectionRecord withoutAdvice, int rows) {
    List<List<String>> forms = new ArrayList<>();
    for (ScreenDetail detail : DETAILS) {
      Screen form = new Screen(withoutAdvice, detail);
      if (form.lines().size() <= rows || detail == DETAILS.get(DETAILS.size() - 1)) {
        forms.add(new Screen(withoutAdvice, detail).before());
      }
    }
    List<String> first = forms.get(0);
    int common = 0;
    while (isInAll(common, first, forms)) {
      common++;
    }
    return first.subList(0, common);
  }

  private static boolean isInAll(int line, List<String> first, List<List<String>> forms) {
    return line < first.size()
        && forms.stream().allMatch(f -> line < f.size() && f.get(line).equals(first.get(line)));
  }

  private List<String> lines() {
    beforeAdvice();
    ScreenAdvice.write(lines, inspection, detail, units);
    lines.add("Never:", never(Verdict.of(report)));
    lines.add("Mind:", Sentence.joined(mind()));
    return lines.all();
  }

  private List<String> before() {
    beforeAdvice();
    return lines.all();
  }

  private void beforeAdvice() {
    Verdict verdict = Verdict.of(report);
    lines.whole(mayItGo(verdict));
    Recommendation crew = report.recommendation();
    if (verdict != Verdict.HELD) {
      lines.add("Load:", Sentence.joined(load(crew)));
      ScreenSeats.write(lines, inspection.boat(), crew, detail, units);
    }
    lines.add("Dry:", dry());
    lines.add("Filled:", filled());
    report
        .spread()
        .map(spread -> new SpreadWords(inspection.boat(), spread, units))
        .ifPresent(words -> lines.add("Sure:", Sentence.joined(words.onScreen())));
    lines.add("Wrong:", Sentence.joined(wrong()));
  }

  private String mayItGo(Verdict verdict) {
    String name = inspection.boat().name();
    int letters = name.codePointCount(0, name.length());
    String shown =
        letters > LONGEST_NAME ? name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME)) : name;
    return switch (verdict) {
      case HELD -> shown + ": launch held. Nobody and nothing goes aboard, as the boat stands.";
      case AFTER_WORK ->
          shown
              + ": "
              + (VerdictSection.onlyAsLoaded(report)
                  ? "not as it is loaded today. Load and sit as shown here."
                  : "launch only after the work listed here is done.");
      case NOTHING_AGAINST ->
          shown + ": nothing found against it within the limits of this inspection.";
    };
  }

  private List<String> load(Recommendation crew) {
    String adult = units.mass(crew.adult(), Side.UP);
    int most = CrewWords.most(crew);
    return List.of(
        "At most "
            + units.mass(crew.load(), Side.DOWN)
            + " in all. With the listed kit ("
            + units.mass(inspection.boat().kitMass(), Side.UP)
            + "), people may weigh at most "
            + units.mass(crew.crew(), Side.DOWN)
            + ": "
            + FigureText.adults(crew.people())
            + " of "
            + adult
            + ". Never more than "
            + FigureText.people(most),
        CrewWords.nearly(crew, units).orElse(""));
  }

  private String dry() {
    Recommendation crew = report.recommendation();
    if (!crew.wasSearched()) {
      return "Not worked out.";
    }
    if (KneeDeepTrial.isUnproven(inspection)) {
      return KneeDeepTrial.labelledDry(inspection);
    }
    return crew.staysUpWith() == 0
        ? "It does not stay within its limits even with one adult."
        : "It stays up with " + FigureText.adults(crew.staysUpWith()) + ".";
  }

  private String filled() {
    Recommendation crew = report.recommendation();
    Optional<String> seen = ObservedTrialWords.of(inspection);
    if (seen.isPresent()) {
      return Sentence.of(seen.get());
    }
    if (!crew.wasSearched()) {
      return "Not worked out.";
    }
    if (KneeDeepTrial.isUnproven(inspection)) {
      return Sentence.of(KneeDeepTrial.NOT_YET);
    }
    return crew.holdsUpWhenSwamped() == 0
        ? "Full of water, it holds up no adult of " + units.mass(crew.adult(), Side.UP) + "."
        : "Full of water, it holds up " + CrewWords.heldUp(crew) + ".";
  }

  /** Every mishap once; the reasons of the search only where no finding shows them. */
  private List<String> wrong() {
    Recommendation crew = report.recommendation();
    List<String> mishaps = crew.wasSearched() ? MishapWords.of(report, units) : List.of();
    List<String> all =
        new ArrayList<>(mishaps.isEmpty() ? RefusalWords.of(crew.reasons(), units) : mishaps);
    if (!mishaps.isEmpty()) {
      ObservedTrialWords.bad(inspection.boat()).ifPresent(bad -> all.add(0, bad));
    }
    if (Verdict.of(report) == Verdict.HELD) {
      all.addAll(stops("Even with one person: ", crew));
      all.addAll(all.isEmpty() ? List.of("No crew meets every check that limits it") : List.of());
    } else if (all.isEmpty()) {
      all.add("Nothing found today");
      all.addAll(stops("With one person more: ", crew));
    }
    int shownMishaps = detail.wrong() + (mishaps.isEmpty() ? 1 : 0);
    List<String> words = new ArrayList<>(all.subList(0, Math.min(shownMishaps, all.size())));
    if (all.size() > shownMishaps) {
      words.add("The page lists the rest");
    }
    int kept = inspection.boat().confirmedMeasurements().size();
    if (kept > 0) {
      words.add(
          kept
              + (kept == 1 ? " measurement looks" : " measurements look")
              + " wrong and was kept; the page gives the reason");
    }
    return words;
  }

  private static List<String> stops(String whom, Recommendation crew) {
    return crew.governedBy().stream().map(factor -> whom + MishapWords.of(factor)).toList();
  }

  private String never(Verdict verdict) {
    if (verdict == Verdict.HELD) {
      return "Going aboard as the boat stands.";
    }
    return Sentence.joined(ForbiddenSection.listed(report.findings(), detail.acts()));
  }

  private List<String> mind() {
    return Stream.concat(
            Stream.concat(
                GlanceSheet.canoeNotes(report).stream(),
                ObservedTrialWords.bounds(inspection).stream()),
            Stream.of(Disclaimer.NO_PLATE, LOCAL_RULES, LIFE_JACKETS))
        .toList();
  }

  /**
   * How much of each part the screen shows.
   *
   * @param seatRows rows of the table of seats
   * @param seatLines lines that the seats of one row may take; none for the page alone
   * @param pieces of advice
   * @param prices whether the effort of each piece of advice is given in full
   * @param gains whether every gain is given, not only the greatest
   * @param wrong mishaps shown; at least one is
   * @param acts forbidden acts shown
   */
  record ScreenDetail(
      int seatRows,
      int seatLines,
      int pieces,
      boolean prices,
      boolean gains,
      int wrong,
      int acts) {}

  /** Lines of a screen: a label, and wrapped text behind it. */
  static final class ScreenLines {
    static final int LABEL = 8;
    private final List<String> lines = new ArrayList<>();

    /** Adds a label and its text; nothing for blank text. */
    void add(String label, String words) {
      if (!words.isBlank()) {
        wrapped(padded(label, LABEL), words);
      }
    }

    /** Adds text at the margin. */
    void whole(String words) {
      wrapped("", words);
    }

    /** Adds text whose label is printed as it is. */
    void add(String label, String first, String words) {
      wrapped(padded(label, LABEL) + first, words);
    }

    private void wrapped(String start, String words) {
      lines.addAll(LineWrap.lines(words, start, " ".repeat(start.length()), Screen.COLUMNS));
    }

    List<String> all() {
      return List.copyOf(lines);
    }

    static String padded(String words, int width) {
      return words + " ".repeat(Math.max(0, width - LineWrap.columns(words)));
    }
  }
}
