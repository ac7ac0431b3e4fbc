package thwartwise.record;

import java.util.List;
import java.util.Optional;
import thwartwise.record.InspectionRecord.Correction;

/**
 * The place of a record in the chain of its boat, kept inside the record, with the hashes of its
 * pages.
 *
 * @param number counted from 1, older records from before there were chains included
 * @param previous hash of the record before it; empty for the first
 * @param corrects the older record whose place it takes
 * @param papers its pages; empty for a record of version 2, which vouches for none
 */
public record ChainLink(
    int number,
    Optional<String> previous,
    Optional<Correction> corrects,
    Optional<List<PaperHash>> papers) {
  /** The place of a record that stands alone and has no pages. */
  public static final ChainLink FIRST =
      new ChainLink(1, Optional.empty(), Optional.empty(), Optional.of(List.of()));

  public ChainLink {
    papers = papers.map(List::copyOf);
  }

  /** The same place with these pages. */
  public ChainLink withPapers(List<PaperHash> pages) {
    return new ChainLink(number, previous, corrects, Optional.of(pages));
  }

  /**
   * One of the pages that lie next to a record, as the record holds it.
   *
   * @param ending of its file's name, after the name of the record
   * @param hash SHA-256 of its content
   */
  public record PaperHash(String ending, String hash) {}
}
