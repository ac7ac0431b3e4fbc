package thwartwise.boat;

import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;

/**
 * A chamber as a solid in the boat; a mirrored one makes two.
 *
 * @param solid the part of the hull's inside within its limits
 * @param straight its volume with straight lines between the stations, m³; no more than that counts
 */
public record Space(ChamberPart part, Solid solid, double straight, CountedBuoyancy counting) {

  public String name() {
    return part.name();
  }

  public Box box() {
    return part.box();
  }

  /** The chamber as it was drawn, perhaps with a twin. */
  public Chamber chamber() {
    return part.whole();
  }

  /** The same space as if it passed its test. */
  Space withClaimProven() {
    double share = counting.ifProven();
    return new Space(part, solid, straight, new CountedBuoyancy(share, share, counting.why()));
  }

  /** The same space with its counted share multiplied by a factor. */
  Space lifting(double factor) {
    return new Space(
        part,
        solid,
        straight,
        new CountedBuoyancy(
            factor * counting.share(), factor * counting.ifProven(), counting.why()));
  }
}
