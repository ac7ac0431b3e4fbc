package thwartwise.boat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The outfit besides the kit: how the boat is rowed, how it anchors, where it leaks.
 *
 * @param leaks each seam by itself; empty where nobody looked
 * @param anchorLine length of the line, chain included, m
 * @param anchorDepth the deepest water it anchors in, m
 */
public record Outfit(
    List<Rowlocks> rowlocks,
    List<SeamLeak> leaks,
    Optional<Double> anchorLine,
    Optional<Double> anchorDepth,
    Optional<AnchorBottom> anchorBottom) {
  public static final Outfit NOT_STATED =
      new Outfit(List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());

  public Outfit {
    rowlocks = List.copyOf(rowlocks);
    leaks = List.copyOf(leaks);
  }

  public Outfit with(Rowlocks more) {
    return withRowlocks(Stream.concat(rowlocks.stream(), Stream.of(more)).toList());
  }

  /** A copy with a leak; it replaces the one at the same seam. */
  public Outfit with(SeamLeak more) {
    Stream<SeamLeak> others = leaks.stream().filter(leak -> !leak.seam().equals(more.seam()));
    return withLeaks(Stream.concat(others, Stream.of(more)).toList());
  }

  public Outfit withRowlocks(List<Rowlocks> others) {
    return new Outfit(others, leaks, anchorLine, anchorDepth, anchorBottom);
  }

  public Outfit withLeaks(List<SeamLeak> others) {
    return new Outfit(rowlocks, others, anchorLine, anchorDepth, anchorBottom);
  }

  public Outfit withAnchorLine(double metres) {
    return new Outfit(rowlocks, leaks, Optional.of(metres), anchorDepth, anchorBottom);
  }

  public Outfit withAnchorDepth(double metres) {
    return new Outfit(rowlocks, leaks, anchorLine, Optional.of(metres), anchorBottom);
  }

  public Outfit withAnchorBottom(AnchorBottom bottom) {
    return new Outfit(rowlocks, leaks, anchorLine, anchorDepth, Optional.of(bottom));
  }

  /** Whether the length of the line and the depth are both known, and with them its slope. */
  public boolean isAnchorLineKnown() {
    return anchorLine.isPresent() && anchorDepth.isPresent();
  }

  /** The total leak rate, m³/s; zero where nobody looked. */
  public double leakRate() {
    return leaks.stream().mapToDouble(SeamLeak::rate).sum();
  }

  /** The bottom on which an anchor lies. */
  public enum AnchorBottom {
    SAND_OR_MUD("sand or mud"),
    STONES_OR_WEED("stones or weed");

    private final String word;

    AnchorBottom(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /**
   * A pair of rowlocks, one on each side.
   *
   * @param x forward of the aft end, m
   */
  public record Rowlocks(double x) {}

  /**
   * Water that leaked through one seam while the boat lay at its mooring.
   *
   * @param seam where it came in
   * @param volume m³
   * @param time in which it came, s
   */
  public record SeamLeak(String seam, double volume, double time) {
    /** m³/s */
    public double rate() {
      return volume / time;
    }
  }
}
