package thwartwise.record;

import java.util.Optional;

/**
 * The place of a record in the chain of its boat, kept inside the record.
 *
 * @param number counted from 1, older records from before there were chains included
 * @param previous hash of the record before it; empty for the first
 * @param corrects the older record whose place it takes
 */
public record ChainLink(int number, Optional<String> previous, Optional<Correction> corrects) {
  public static final ChainLink FIRST = new ChainLink(1, Optional.empty(), Optional.empty());
}
