package thwartwise.record;

import java.util.List;

/**
 * The list of a boat's records that lies beside them. Without it nobody could tell that the last
 * record is gone.
 *
 * @param there whether the list was found
 * @param lines in the order in which the records were kept
 * @param spoilt numbers of the lines that cannot be read
 * @param anew the numbers at which the list had to be begun anew
 */
public record ChainList(boolean there, List<Line> lines, List<Integer> spoilt, List<Integer> anew) {
  public static final ChainList NONE = new ChainList(false, List.of(), List.of(), List.of());

  public ChainList {
    lines = List.copyOf(lines);
    spoilt = List.copyOf(spoilt);
    anew = List.copyOf(anew);
  }

  /**
   * One record as it was when it was kept.
   *
   * @param file name of its file
   * @param hash of its content
   */
  public record Line(int number, String file, String hash) {}
}
