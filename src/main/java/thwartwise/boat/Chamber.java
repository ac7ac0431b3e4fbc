package thwartwise.boat;

import java.util.Optional;
import thwartwise.geometry.Box;

/**
 * An enclosed space or foam block that may hold the swamped boat up: the part of the hull's inside
 * within a box.
 *
 * @param measuredVolume litres poured in, in m³, of one of the two when mirrored
 * @param mirrored whether it has a twin on the other side
 * @param limberHole whether water in the bilge can run past under it
 */
public record Chamber(
    String name,
    Box box,
    Filling filling,
    Optional<Double> measuredVolume,
    boolean mirrored,
    boolean limberHole) {

  /** The same space with something else in it, or something else known of its seal. */
  public Chamber filledWith(Filling other) {
    return new Chamber(name, box, other, measuredVolume, mirrored, limberHole);
  }

  /** A chamber that water in the bilge cannot run past. */
  public Chamber(
      String name, Box box, Filling filling, Optional<Double> measuredVolume, boolean mirrored) {
    this(name, box, filling, measuredVolume, mirrored, false);
  }
}
