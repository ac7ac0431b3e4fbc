package thwartwise.record;

import java.time.OffsetDateTime;
import thwartwise.boat.Boat;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitSystem;

/**
 * One saved inspection: the measurements and the result.
 *
 * @param date when, with the offset of the place
 * @param by who made it
 * @param programVersion the version that computed it
 */
public record InspectionRecord(
    OffsetDateTime date, String by, String programVersion, Boat boat, Report report) {

  /** The same in these units. */
  public InspectionRecord in(UnitSystem units) {
    return new InspectionRecord(date, by, programVersion, boat.in(units), report);
  }

  /**
   * A record replaces an older one that was wrong. The older one stays where it is.
   *
   * @param number of the older record in the chain of the boat
   * @param record name of its file, without the ending
   * @param hash of its content
   * @param reason why, in the words of the person who corrects it
   */
  public record Correction(int number, String record, String hash, String reason) {}
}
