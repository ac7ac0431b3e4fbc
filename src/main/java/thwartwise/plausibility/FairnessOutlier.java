package thwartwise.plausibility;

import thwartwise.hull.ReadingDirection;
import thwartwise.hull.TapeSlip;

/**
 * A reading that lies off the fair curve through the same points of the other stations.
 *
 * @param station counted from 0 at the aft end
 * @param point counted from 0 at the keel
 * @param port false for a reading of the starboard side
 * @param direction what was read
 * @param value as measured, half-breadths positive on both sides, m
 * @param fair the value nearest to it that would be in line, m
 * @param slip the usual slip that explains it
 * @param meant what was probably read; {@code fair} where no usual slip explains it, m
 */
public record FairnessOutlier(
    int station,
    int point,
    boolean port,
    ReadingDirection direction,
    double value,
    double fair,
    TapeSlip slip,
    double meant) {

  /** The factor by which it is too large or too small. */
  double factor() {
    double a = Math.max(Math.abs(value), FairnessOutlier.LEAST);
    double b = Math.max(Math.abs(fair), FairnessOutlier.LEAST);
    return Math.max(a, b) / Math.min(a, b);
  }

  // Below a centimetre a ratio says nothing.
  private static final double LEAST = 0.01;
}
