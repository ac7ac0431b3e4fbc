package thwartwise.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Vector3;

/**
 * An opening other than the rail that lets water in: its lowest edge.
 *
 * @param middle middle of that edge; of a drain the middle of the hole
 * @param width length of that edge, m
 * @param athwart true when the edge runs across the boat, false when it runs along it
 * @param closedBy what closes it under way, such as bung or hatch; empty when nothing does
 * @param into the chamber it leads into; empty when it leads into the boat
 * @param diameter of a round hole, m
 */
public record Opening(
    String name,
    Vector3 middle,
    double width,
    boolean athwart,
    Optional<String> closedBy,
    Optional<String> into,
    Optional<Double> diameter) {

  /** A wider hole is no drain and takes no cable, m (judgement). */
  public static final double SMALL_HOLE = 0.1;

  /** An edge that nothing closes, such as a notch in the transom. */
  public Opening(String name, Vector3 middle, double width, boolean athwart) {
    this(name, middle, width, athwart, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Whether water that reaches it always runs into the boat. */
  public boolean floodsTheBoat() {
    return closedBy.isEmpty() && into.isEmpty();
  }

  /**
   * Whether a lid, cover or screw-in pocket belongs there: it leads into a chamber and is no small
   * round hole such as a drain.
   */
  public boolean isHatch() {
    return into.isPresent() && diameter.filter(across -> across <= SMALL_HOLE).isEmpty();
  }

  /** Both ends of the edge: a wide opening floods at the lower one. */
  public List<Vector3> ends() {
    Vector3 half = athwart ? Vector3.of(0, width / 2, 0) : Vector3.of(width / 2, 0, 0);
    return List.of(middle.minus(half), middle.plus(half));
  }
}
