package thwartwise.report;

import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.ObservedTrial;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.record.InspectionRecord;

/** An observed trial in the flooded boat, distinct from what was computed. */
public final class ObservedTrialWords {
  private ObservedTrialWords() {}

  /** The trial, if it counts. */
  static Optional<ObservedTrial> counting(InspectionRecord inspection) {
    return inspection.report().observedTrial(inspection.boat(), inspection.date().toLocalDate());
  }

  /** The trial in one sentence, if it counts. */
  public static Optional<String> of(InspectionRecord inspection) {
    return counting(inspection)
        .map(
            seen ->
                "Full of water, it was seen to float level with heads clear (seen, not worked"
                    + " out): "
                    + details(inspection.boat(), seen));
  }

  /** What the trial covers, if it counts. */
  public static Optional<String> bounds(InspectionRecord inspection) {
    return counting(inspection)
        .map(
            seen ->
                "What was seen counts on that day only, for those people on those seats ("
                    + SeatTable.one(seen.seats())
                    + ") and for no more weight");
  }

  /** A failed trial. */
  static Optional<String> bad(Boat boat) {
    return boat.observedTrial().filter(ObservedTrial::failed).map(seen -> any(boat, seen));
  }

  /** Any trial, whether it counts or not. */
  static String any(Boat boat, ObservedTrial seen) {
    return "Trial in knee-deep water: "
        + (seen.failed() ? "it went badly, " : "it went well and counts on its day only, ")
        + details(boat, seen);
  }

  private static String details(Boat boat, ObservedTrial seen) {
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
