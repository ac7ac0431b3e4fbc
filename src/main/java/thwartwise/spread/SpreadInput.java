package thwartwise.spread;

import thwartwise.uncertainty.Distribution;

/**
 * One measurement of a boat that may be off, by itself.
 *
 * @param item the name of what was measured, as somebody typed it; empty where it is the boat's
 * @param distribution about the value as measured, SI
 * @param betterSpread one standard deviation once it is measured again the better way; that of the
 *     distribution where there is none, or it was taken so
 * @param variation the boat where it has another value
 */
record SpreadInput(
    InputKind kind,
    String item,
    Distribution distribution,
    double betterSpread,
    Variation variation) {

  /** What another value of one measurement makes of a boat. */
  @FunctionalInterface
  interface Variation {
    VariedBoat of(VariedBoat boat, double value);
  }

  double spread() {
    return distribution.standardDeviation();
  }

  /** What of its spread is left once it is measured again the better way. */
  double left() {
    return betterSpread / spread();
  }
}
