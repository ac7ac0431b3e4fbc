package thwartwise.report;

import java.util.List;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.inspection.Report;
import thwartwise.inspection.StateFigures.SwampedFigures;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;
import thwartwise.rules.ValidWaters.WaterStatement;

/**
 * Half a page for the lid of the locker: what a person who steps in must know, and until when it is
 * valid.
 */
final class Card {
  private static final String AFTER_WORK =
      "Launch only after the work listed on the page of this record is done";
  private static final int REASONS = 3;

  private Card() {}

  /**
   * @param number of the record it comes from
   */
  static Page of(InspectionRecord inspection, String number) {
    Report report = inspection.report();
    Page page = new Page().title(inspection.boat().name());
    verdict(page, report);
    page.points(PageFrame.confirmedMeasurements(inspection.boat()));
    GlanceSheet.loadedSo(page, inspection);
    if (Verdict.of(report) == Verdict.HELD) {
      page.paragraph(KneeDeepTrial.dryOnly(inspection));
      RefusalWords.brief(report.recommendation().reasons(), ReaderUnits.of(inspection.boat()))
          .stream()
          .limit(REASONS)
          .forEach(page::point);
      page.point("Put right what the page of this record lists, then inspect again");
    } else {
      page.paragraph(
          ObservedTrialWords.of(inspection).orElse(""),
          ObservedTrialWords.bounds(inspection).orElse(""));
      page.gap().paragraph("If it fills or turns over:");
      page.point(ifItFills(inspection));
      waters(page, report.waters(), ReaderUnits.of(inspection.boat()));
    }
    page.gap()
        .paragraph(Disclaimer.LAST_WORD, Disclaimer.NO_PLATE, "Never rely on this card alone");
    return page.paragraph(ValidityPeriod.words(inspection)).paragraph(from(inspection, number));
  }

  private static String[] ifItFills(InspectionRecord inspection) {
    Report report = inspection.report();
    return ObservedTrialWords.counting(inspection).isPresent()
        ? SwampedWords.observedTrial()
        : SwampedWords.of(report.atLimit().swamped(), report.recommendation().heldOnTo());
  }

  private static void waters(Page page, List<WaterStatement> waters, UnitFormat units) {
    if (!waters.isEmpty()) {
      page.gap();
      waters.forEach(w -> page.paragraph(WaterWords.sentence(w, units)));
    }
  }

  private static void verdict(Page page, Report report) {
    Verdict verdict = Verdict.of(report);
    page.banner(verdict == Verdict.AFTER_WORK ? AFTER_WORK : verdict.words());
    if (verdict == Verdict.AFTER_WORK && VerdictSection.onlyAsLoaded(report)) {
      page.paragraph(
          "Not as it was loaded on the day of the inspection: load and sit as shown here");
    }
  }

  private static String from(InspectionRecord inspection, String number) {
    return "Record "
        + number
        + " of "
        + TimestampText.of(inspection.date())
        + " by "
        + inspection.by();
  }

  /** What to do when the boat is full of water, given how it floats then. */
  static final class SwampedWords {
    private static final String STAY =
        "Everybody stays with the boat and holds on; nobody swims for the shore. Call for help at"
            + " once";

    private SwampedWords() {}

    static String[] of(SwampedFigures swamped, boolean heldOnTo) {
      return new String[] {
        STAY,
        swamped.floats() && heldOnTo
            ? "Full of water, it carries nobody inside: stay in the water and hold on from both"
                + " sides"
            : lies(swamped)
      };
    }

    /** A boat that floated level in a trial, whatever the computation says. */
    static String[] observedTrial() {
      return new String[] {
        STAY,
        "Sit low in it as in the trial, keep still and bail; if it sinks, hold on to whatever"
            + " floats"
      };
    }

    private static String lies(SwampedFigures swamped) {
      if (!swamped.floats()) {
        return "Full of water, it sinks and holds nobody up: hold on to whatever floats";
      }
      if (swamped.pose().isEmpty()) {
        return "How it floats when full of water is not known: hold on to it from outside";
      }
      return swamped.pose().get().orientation() == PoseOrientation.UPRIGHT
          ? "Full of water, it floats upright by calculation: sit low in the middle, keep still and"
              + " bail"
          : "Full of water, it rolls over or stands on end: get clear and hold on from outside";
    }
  }
}
