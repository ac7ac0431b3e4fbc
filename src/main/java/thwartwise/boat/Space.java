package thwartwise.boat;

import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;

/**
 * A chamber as it stands in the boat; a mirrored one makes two.
 *
 * @param chamber what was measured; its twin has the same
 * @param box its limits
 * @param solid the part of the hull's inside within them
 */
public record Space(Chamber chamber, String name, Box box, Solid solid, Counting counting) {

  /** The same space as it would be if it passed its test. */
  Space withClaimProven() {
    double share = counting.ifProven();
    return new Space(chamber, name, box, solid, new Counting(share, share, counting.why()));
  }
}
