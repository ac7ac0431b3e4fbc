package thwartwise.boat;

/** What fills a chamber. */
public sealed interface Filling {

  /** Air behind a seal. A test is held beside the claim; without one nothing is proven. */
  record Air(Seal seal, java.util.Optional<SealTest> test) implements Filling {}

  /** A block of foam; only closed-cell foam that is fastened counts. */
  record Foam(boolean closedCell, boolean fastened) implements Filling {}
}
