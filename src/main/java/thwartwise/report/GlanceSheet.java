package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import thwartwise.advice.AdvicePiece;
import thwartwise.boat.Boat;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.LoadBar;
import thwartwise.page.Page;
import thwartwise.picture.Pictures;
import thwartwise.record.InspectionRecord;

/**
 * What must be read at arm's length: whether it may be launched, how much, how many, where they
 * sit, what nobody may do, what to do first. A held launch has no figures.
 */
final class GlanceSheet {
  private static final String HELD = "Nobody and nothing goes aboard, as the boat stands";
  private static final String FIRST = "To do first, of all changes tried:";

  /** At most so many are named here; each is named above as well. */
  private static final int MOST = 3;

  private static final String AFTER = "To do after that, of all changes tried:";
  private static final String MORE = "What would let it carry more, of all changes tried:";

  private final InspectionRecord inspection;
  private final Report report;
  private final Recommendation crew;
  private final UnitFormat units;
  private final boolean forStrangers;

  private GlanceSheet(InspectionRecord inspection, boolean forStrangers) {
    this.inspection = inspection;
    this.forStrangers = forStrangers;
    this.report = inspection.report();
    this.crew = report.recommendation();
    this.units = ReaderUnits.of(inspection.boat());
  }

  static void write(Page page, InspectionRecord inspection, Pictures pictures) {
    new GlanceSheet(inspection, false).write(page, pictures);
  }

  /** The load under which it may go, for the card; a held launch has no figures. */
  static void loadedSo(Page page, InspectionRecord inspection) {
    new GlanceSheet(inspection, true).loadedSo(page);
  }

  private void write(Page page, Pictures pictures) {
    page.heading("May it be launched?").banner(Verdict.of(report).words());
    VerdictSection.reasonsAgainst(page, report, units);
    carries(page);
    if (Verdict.of(report) != Verdict.HELD) {
      load(page, inspection.boat());
    }
    PicturesSheet.fromAbove(page, pictures, units);
    forbiddenActs(page);
    page.paragraph(dryAndFilled());
    page.paragraph(VerdictSection.nextPerson(crew, units));
    first(page);
    report.waters().forEach(w -> page.paragraph(WaterWords.sentence(w, units)));
    page.paragraph(Disclaimer.NO_PLATE, Disclaimer.LAST_WORD);
  }

  private void loadedSo(Page page) {
    carries(page);
    forbiddenActs(page);
  }

  private void forbiddenActs(Page page) {
    if (Verdict.of(report) != Verdict.HELD) {
      page.gap();
      ForbiddenSection.brief(page, report.findings());
    }
  }

  private void carries(Page page) {
    if (Verdict.of(report) == Verdict.HELD) {
      page.paragraph(HELD);
      return;
    }
    figures(page);
    canoeNotes(report).forEach(page::paragraph);
    page.gap();
    if (forStrangers) {
      SeatTable.forStrangers(page, inspection.boat().places(), crew, units);
    } else {
      SeatTable.write(page, inspection.boat().places(), crew, units);
    }
    EmptyHelmWords.of(inspection.boat(), crew).ifPresent(page::paragraph);
  }

  private void figures(Page page) {
    page.figure(
        units.mass(crew.crew(), Side.DOWN),
        other(crew.crew())
            + "all people together, dressed, with "
            + FigureText.people(CrewWords.aboard(crew))
            + " aboard"
            + CrewWords.heaviest(crew, units));
    heads(page);
    page.figure(
        units.mass(crew.load(), Side.DOWN),
        other(crew.load()) + "total load: people, kit and everything that is not built in");
  }

  /**
   * The figure in the other unit too, because strangers read a card and may weigh themselves in it.
   */
  private String other(double mass) {
    return forStrangers ? "(" + units.other().mass(mass, Side.DOWN) + ") " : "";
  }

  private void heads(Page page) {
    String adult = units.mass(crew.adult(), Side.UP);
    if (crew.people() > 0) {
      page.figure(
          counted(crew.people(), "adult", "adults"),
          "of " + adult + CrewWords.nearly(crew, units).map(n -> ". " + n).orElse(""));
      return;
    }
    CrewLimit lighter = crew.crewLimits().get(0);
    page.figure(
        counted(lighter.people(), "person", "people"),
        CrewWords.upTo(lighter, units) + "; no adult of " + adult);
  }

  private static String counted(int heads, String one, String several) {
    return FigureText.with(String.valueOf(heads), heads == 1 ? one : several);
  }

  // What is left of the load is for people; other things were searched only up to the figure given.
  private void load(Page page, Boat boat) {
    double kit = boat.kitMass();
    double people = boat.aboard().stream().mapToDouble(p -> p.mass()).sum();
    double over = kit + people - crew.load();
    page.gap().load(new LoadBar(crew.load(), kit, people, units));
    page.paragraph(
        "Today: "
            + units.mass(kit, Side.UP)
            + " of kit and "
            + units.mass(people, Side.UP)
            + " of people, together "
            + units.mass(kit + people, Side.UP),
        over > 0
            ? "That is " + units.mass(over, Side.UP) + " too much"
            : "That leaves "
                + units.mass(-over, Side.DOWN)
                + " for people; of this, other things may weigh at most "
                + units.mass(Math.min(-over, crew.extra()), Side.DOWN));
  }

  private String[] dryAndFilled() {
    if (!crew.wasSearched()) {
      return new String[] {};
    }
    boolean claimed = crew.ifClaimsProven() != crew.people();
    return new String[] {
      KneeDeepTrial.isUnproven(inspection)
          ? KneeDeepTrial.dryOnly(inspection)
          : "Dry, it stays up with " + FigureText.adults(crew.staysUpWith()),
      KneeDeepTrial.isUnproven(inspection) ? "" : full(),
      ObservedTrialWords.bounds(inspection).orElse(""),
      claimed
          ? "It carries "
              + FigureText.adults(crew.ifClaimsProven())
              + " once a leak test proves every chamber tight"
          : ""
    };
  }

  private String full() {
    return ObservedTrialWords.of(inspection).orElseGet(this::worked);
  }

  private String worked() {
    return "Full of water, it holds up " + CrewWords.heldUp(crew);
  }

  /** Faults to correct, before anything that would make the boat carry more. */
  private boolean corrections(Page page) {
    List<String> all = ChecklistWords.toPutRight(inspection);
    if (all.isEmpty()) {
      return false;
    }
    page.gap().paragraph("To do first:");
    int listed = Math.min(MOST, all.size());
    for (int i = 0; i < listed; i++) {
      page.numbered(i + 1, all.get(i));
    }
    if (all.size() > listed) {
      page.paragraph("More to put right is named above: " + (all.size() - listed) + " in all");
    }
    return true;
  }

  private String heading(boolean afterWork) {
    return afterWork ? AFTER : Verdict.of(report) == Verdict.NOTHING_AGAINST ? MORE : FIRST;
  }

  /** The gain of each; the sheet about changes says how to do it. */
  private void first(Page page) {
    List<AdvicePiece> pieces = AdviceSection.first(report.advice());
    boolean trial = KneeDeepTrial.isAskedOf(inspection);
    boolean work = corrections(page);
    if (trial) {
      page.gap().paragraph((work ? "After that: " : "To do first: ") + KneeDeepTrial.named());
    }
    if (pieces.isEmpty()) {
      return;
    }
    page.gap().paragraph(heading(trial || work));
    for (int i = 0; i < pieces.size(); i++) {
      page.numbered(i + 1, AdviceWords.first(pieces.get(i), crew, units));
    }
  }

  /**
   * What a canoe, or another boat that its crew holds on to when swamped, asks of the crew; empty
   * for other boats.
   */
  static List<String> canoeNotes(Report report) {
    List<String> words = new ArrayList<>();
    if (report.findings().stream().anyMatch(f -> f.question().check() == CheckId.SITTING_UP)) {
      words.add("The figures are for people who kneel on the floor, as in a canoe");
    }
    if (report.recommendation().heldOnTo()) {
      words.add("Nobody can sit in it when it is swamped: everybody holds on to it from the water");
    }
    if (report.findings().stream().anyMatch(GlanceSheet::tipsWhenStiff)) {
      words.add(
          "One stiff, sleeping or frightened person a hand's breadth off the middle can tip it");
    }
    return words;
  }

  /** For a boat that is no canoe, this limits the crew instead. */
  private static boolean tipsWhenStiff(Finding finding) {
    return finding.role() == Role.FORBIDS_AN_ACT
        && finding.question().check() == CheckId.STIFF_OFF_THE_MIDDLE
        && finding.outcome() != Outcome.MEETS;
  }
}
