package thwartwise.record;

import java.util.Optional;
import java.util.OptionalInt;
import thwartwise.measure.UnitSystem;
import thwartwise.record.InspectionRecord.Correction;

/**
 * A record with its place among those of its boat.
 *
 * @param handle what a person types to name it, as in custard-tart/2
 * @param name of its file, without the ending
 * @param number in the chain; empty when it is not part of it
 * @param hash of its content
 * @param intact whether its content fits the hash it gives itself
 * @param chained false for a record from before there were chains
 * @param sealsPapers whether it holds the hashes of its pages; older records do not
 */
public record RecordEntry(
    String handle,
    String name,
    OptionalInt number,
    String hash,
    boolean intact,
    boolean chained,
    boolean sealsPapers,
    Optional<Correction> corrects,
    InspectionRecord inspection) {

  /** The same in these units. */
  public RecordEntry in(UnitSystem units) {
    return new RecordEntry(
        handle, name, number, hash, intact, chained, sealsPapers, corrects, inspection.in(units));
  }
}
