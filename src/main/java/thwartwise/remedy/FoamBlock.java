package thwartwise.remedy;

import thwartwise.geometry.Box;

/**
 * One block of foam, or a pair of them.
 *
 * @param box the part of the hull's inside that it fills
 */
public record FoamBlock(Box box, boolean mirrored) {
  /** Of a block along a side where the boat is narrowest next to it, m (judgement). */
  public static final double THICK = 0.15;
}
