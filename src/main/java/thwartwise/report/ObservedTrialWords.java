package thwartwise.report;

import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.ObservedTrial;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.record.InspectionRecord;

/** What was seen of the boat full of water, told apart from what was worked out. */
public final class ObservedTrialWords {
  private ObservedTrialWords() {}

  /** Where it counts. */
  static Optional<ObservedTrial> counting(InspectionRecord inspection) {
    return inspection.report().observedTrial(inspection.boat(), inspection.date().toLocalDate());
  }

  /** In one sentence, where it counts. */
  public static Optional<String> of(InspectionRecord inspection) {
    return counting(inspection)
        .map(
            seen ->
                "Full of water, it was seen to float level with heads clear (seen, not worked"
                    + " out): "
                    + told(inspection.boat(), seen));
  }

  /** How far it goes, where it counts. */
  public static Optional<String> bounds(InspectionRecord inspection) {
    return counting(inspection)
        .map(
            seen ->
                "What was seen counts on that day only, for those people on those seats ("
                    + SeatTable.one(seen.seats())
                    + ") and for no more weight");
  }

  /** Of one that went badly. */
  static Optional<String> bad(Boat boat) {
    return boat.observedTrial().filter(ObservedTrial::failed).map(seen -> any(boat, seen));
  }

  /** Of any trial, whether it counts or not. */
  static String any(Boat boat, ObservedTrial seen) {
    return "Trial in knee-deep water: "
        + (seen.failed() ? "it went badly, " : "it went well and counts on its day only, ")
        + told(boat, seen);
  }

  private static String told(Boat boat, ObservedTrial seen) {
    return "with "
        + FigureText.people(seen.people())
        + " of "
        + ReaderUnits.of(boat).mass(seen.mass(), Side.DOWN)
        + (seen.people() == 1 ? "" : " in all")
        + ", on "
        + TimestampText.day(seen.date())
        + ", by "
        + seen.by();
  }
}
