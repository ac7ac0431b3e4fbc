package thwartwise.archive;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import thwartwise.record.Paper;

/**
 * An inspection to be saved, and what appears or goes together with its record.
 *
 * @param papers makes the pages next to the record; its number is the name of its file
 * @param corrects the older record that it replaces
 * @param withBoat whether the inspected boat becomes the boat file
 * @param finishedDraft name of the walk that ended in it
 */
public record NewRecord(
    InspectionRecord inspection,
    Papers papers,
    Optional<Correction> corrects,
    boolean withBoat,
    Optional<String> finishedDraft) {

  /** The pages of a record with a known number. */
  public interface Papers {
    List<Paper> of(String number, Optional<Correction> corrects);
  }

  public static NewRecord of(InspectionRecord inspection, Papers papers) {
    return new NewRecord(inspection, papers, Optional.empty(), false, Optional.empty());
  }

  public NewRecord correcting(Optional<Correction> older) {
    return new NewRecord(inspection, papers, older, withBoat, finishedDraft);
  }

  public NewRecord withBoatFile() {
    return new NewRecord(inspection, papers, corrects, true, finishedDraft);
  }

  public NewRecord ending(String draft) {
    return new NewRecord(inspection, papers, corrects, withBoat, Optional.of(draft));
  }

  /**
   * A saved record.
   *
   * @param file the JSON file
   * @param warnings one line for each list or draft that could not be updated
   */
  public record SavedRecord(Path file, List<String> warnings) {
    public SavedRecord {
      warnings = List.copyOf(warnings);
    }
  }
}
