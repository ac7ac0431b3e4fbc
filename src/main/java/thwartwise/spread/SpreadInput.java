package thwartwise.spread;

import java.util.Optional;
import thwartwise.boat.HullWeight;
import thwartwise.uncertainty.Distribution;

/**
 * One measurement of a boat that may be off, by itself.
 *
 * @param item the name of what was measured, as somebody typed it; empty for the boat
 * @param distribution about the value as measured, SI
 * @param betterSpread one standard deviation after measuring again the better way; that of the
 *     distribution where there is none, or it was taken so
 * @param variation the boat with another value
 */
record SpreadInput(
    InputKind kind,
    String item,
    Distribution distribution,
    double betterSpread,
    Variation variation) {

  /** The boat with another value of one measurement. */
  @FunctionalInterface
  interface Variation {
    VariedBoat of(VariedBoat boat, double value);
  }

  /** The same input, limited to this spread of the hull's weight by proofs afloat. */
  SpreadInput proved(Optional<HullWeight> mayBeOff) {
    return mayBeOff
        .flatMap(spread -> ofHull(spread))
        .filter(spread -> spread < spread())
        .map(this::narrowedTo)
        .orElse(this);
  }

  private Optional<Double> ofHull(HullWeight spread) {
    return switch (kind) {
      case HULL_MASS -> Optional.of(spread.mass());
      case HULL_CENTRE_ALONG -> Optional.of(spread.along());
      case HULL_CENTRE_HEIGHT -> Optional.of(spread.height());
      default -> Optional.empty();
    };
  }

  private SpreadInput narrowedTo(double spread) {
    return new SpreadInput(
        kind,
        item,
        SpreadInputs.narrowed(distribution, spread),
        Math.min(betterSpread, spread),
        variation);
  }

  double spread() {
    return distribution.standardDeviation();
  }

  /** The share of its spread that is left after measuring again the better way. */
  double left() {
    return betterSpread / spread();
  }
}
