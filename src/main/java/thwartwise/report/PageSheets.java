package thwartwise.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import thwartwise.boat.Boat;
import thwartwise.checklist.Checklist;
import thwartwise.checklist.ChecklistPoint;
import thwartwise.files.rules.ChecklistFile;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;
import thwartwise.passage.PassagePlan;
import thwartwise.picture.Pictures;
import thwartwise.record.InspectionRecord;

/**
 * Everything between the head and the foot of the page, sheet by sheet, in the order in which
 * people ask.
 */
final class PageSheets {
  private PageSheets() {}

  /**
   * Writes the sheets.
   *
   * @param pictures of the boat; none for a form that cannot show any
   */
  static void write(Page page, InspectionRecord inspection, Pictures pictures) {
    Sources sources = new Sources();
    GlanceSheet.write(page, inspection, pictures);
    PicturesSheet.write(page, pictures, ReaderUnits.of(inspection.boat()));
    changes(page, inspection, pictures);
    checks(page, inspection, sources);
    checklists(page, inspection);
    basis(page, inspection, sources);
  }

  // What nobody measured, and what nobody looked at.

  private static final List<String> NOT_LOOKED_AT =
      List.of(
          "The boat under sail, planing, towing, or towed faster than a walk.",
          "How it moves in waves and wash: a wave counts only as freeboard that must be there.",
          "More current or wind than the figures here name.",
          "Petrol aboard beyond a portable tank, and boats of more than one hull.",
          "The strength of hull, seats and fastenings, rot, cracks, wiring and motor.",
          "Whether the people can swim, row, bail or climb back in.");

  static void assumptions(Page page, InspectionRecord inspection) {
    Boat boat = inspection.boat();
    UnitFormat units = ReaderUnits.of(boat);
    Set<String> general =
        new LinkedHashSet<>(AssumptionWords.of(inspection.report().assumptions(), units));
    List<String> own = AssumptionWords.of(boat);
    own.forEach(general::remove);
    // Older records have the assumptions about the boat in metric words for every reader.
    AssumptionWords.of(boat.assumptions(), UnitFormat.METRIC).forEach(general::remove);
    page.heading("What was assumed");
    if (own.isEmpty() && general.isEmpty()) {
      page.paragraph("No assumption was noted");
    }
    page.points(own);
    if (!general.isEmpty()) {
      page.folded(
          "Assumptions behind the figures, which nobody measured",
          new Page().points(List.copyOf(general)));
    }
    page.heading("What was not looked at");
    NOT_LOOKED_AT.forEach(page::note);
  }

  /** Cautions for every boat, whatever the figures say. */
  static void cautions(Page page, UnitFormat units) {
    page.heading("Before anybody steps in");
    page.point(
        "Never rely on this page alone",
        "It is arithmetic on what was measured; a slip of the tape is a slip in the answer");
    page.point(
        "Try it first: in warm shallow water with somebody standing by, load the boat, lean it,"
            + " then fill it and see whether it floats as described here");
    page.point(
        "Weigh people and gear",
        "A guess is usually too light; clothes, boots and water cans count");
    page.point("Everybody wears a life jacket that fits, fastened before stepping in");
    page.point(
        "Cold water takes your breath first and your strength next",
        "Below "
            + units.either("15 degrees Celsius", () -> units.temperature(15, Side.UP))
            + " dress for the water and not for the air");
    page.point("Check wind, forecast and current; if in doubt, stay ashore or take fewer people");
    page.point(
        "What was not measured or not tested counts for nothing here",
        "A repair, new kit, a soaked hull or twelve months make this page out of date");
    page.point(
        "Local rules come first, and so does the word of a naval architect or surveyor licensed"
            + " where the boat is used");
  }

  /** The basis of it all: measurements, assumptions, what was not looked at, and the sources. */
  private static void basis(Page page, InspectionRecord inspection, Sources sources) {
    page.part("What it rests on");
    page.folded(
        "What was measured",
        MeasuredSection.of(inspection.boat(), ReaderUnits.of(inspection.boat())));
    assumptions(page, inspection);
    sources.write(page);
    cautions(page, ReaderUnits.of(inspection.boat()));
  }

  /** What no computation shows: points to look at by hand and eye, and to tick with a pen. */
  private static void checklists(Page page, InspectionRecord inspection) {
    Boat boat = inspection.boat();
    page.sheet("To look at by hand and eye");
    HandlingSection.write(page, inspection);
    page.paragraph("Nothing below was looked at for this inspection", "An empty box means no");
    for (Checklist list : ChecklistFile.onPaper()) {
      Page points = new Page();
      for (ChecklistPoint point : list.askedOf(boat)) {
        points.ticked(point.of(boat), point.why());
      }
      page.folded(
          list.name() + " (" + list.when() + ")", points.paragraph("Source: " + list.source()));
    }
  }

  /** Possible changes and their effort, what nobody may do and why, and other seatings. */
  private static void changes(Page page, InspectionRecord inspection, Pictures pictures) {
    Report report = inspection.report();
    UnitFormat units = ReaderUnits.of(inspection.boat());
    page.part("What to change, and what nobody may do");
    KneeDeepTrial.write(page, inspection);
    AdviceSection.write(page, report, pictures, units);
    ForbiddenSection.write(page, report, units);
    if (Verdict.of(report) != Verdict.HELD) {
      Page others = SeatTable.others(inspection.boat().places(), report.recommendation(), units);
      if (!others.blocks().isEmpty()) {
        page.folded("Other seatings for lighter people", others);
      }
    }
  }

  /**
   * Every figure: questions, buoyancy, floating positions, published rules, and what was found
   * without a rule.
   */
  private static void checks(Page page, InspectionRecord inspection, Sources sources) {
    Report report = inspection.report();
    UnitFormat units = ReaderUnits.of(inspection.boat());
    page.part("Every check");
    page.paragraph(
        LoadCaseWords.of(report.asLoaded().loadCase(), units),
        LoadCaseWords.of(report.atLimit().loadCase(), units));
    CheckTable.write(page, report, sources, units);
    ChambersSection.write(page, report.chambers(), units);
    FloatingSection.write(page, report, units);
    FormulasSection.write(page, report.capacityFigures(), sources, units);
    page.heading("Looked at by hand and eye");
    ChecklistSection.write(page, inspection);
    electrics(page, inspection);
  }

  /** The range of battery and motor, and whether the wires are in order. */
  private static void electrics(Page page, InspectionRecord inspection) {
    Boat boat = inspection.boat();
    if (boat.electrics().isEmpty()) {
      return;
    }
    page.heading("Battery, motor and wires");
    LocalDate day = inspection.date().toLocalDate();
    List<String> words = new ArrayList<>();
    if (boat.electrics().motor().isPresent()) {
      words.addAll(RangePage.inShort(PassagePlan.of(boat, day)));
    }
    words.add(WiringPage.inShort(boat, day));
    page.points(words);
  }
}
