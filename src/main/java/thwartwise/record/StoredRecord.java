package thwartwise.record;

import java.util.Optional;
import thwartwise.record.Chain.ChainList;

/**
 * A record file as it lies in the folder now, whether anybody can read it or not.
 *
 * @param file its name
 * @param hash worked out anew from its content
 * @param stated the hash it gives itself; records from before there were chains give none
 * @param link its place in the chain, where it says so and can be read
 * @param boat the name of the boat it is about; empty when it cannot be read
 * @param unreadable why it cannot be read, in one line
 */
public record StoredRecord(
    String file,
    String hash,
    Optional<String> stated,
    Optional<ChainLink> link,
    Optional<String> boat,
    Optional<String> unreadable) {

  /** Whether it says of itself what its content says. */
  public boolean hasMatchingHash() {
    return stated.map(hash::equals).orElse(true);
  }

  /** From before there were chains: it says nothing of its place. */
  public boolean isOld() {
    return link.isEmpty() && unreadable.isEmpty();
  }

  /** The number it gives itself; nought where it gives none. */
  public int number() {
    return link.map(ChainLink::number).orElse(0);
  }

  /** Whether it is whole and goes on where the list ends. */
  public boolean isNextAfter(ChainList.Line last) {
    return hasMatchingHash() && number() == last.number() + 1 && follows(last.hash());
  }

  boolean follows(String earlier) {
    return link.flatMap(ChainLink::previous).map(earlier::equals).orElse(false);
  }
}
