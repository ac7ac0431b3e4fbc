package thwartwise.hull;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Vector3;

/**
 * A place where the outline of one side of a hull, keel to rail, crosses itself seen along the
 * boat: most likely the two points named were swapped. No hull has such an outline, and none can be
 * built from it.
 *
 * <p>Either two stretches that are not neighbours cut each other, or the outline comes back to the
 * middle line between keel and rail after having left it, and there touches the other side. Since
 * the points of a side lie on that side only, port and starboard can meet nowhere else.
 *
 * @param first number of the first of the two points, from 0
 * @param second number of the other
 */
public record Crossing(int first, int second) {

  /** The first crossing on either side. */
  public static Optional<Crossing> of(List<Vector3> side) {
    for (int i = 0; i + 1 < side.size(); i++) {
      for (int j = i + 2; j + 1 < side.size(); j++) {
        if (cut(side.get(i), side.get(i + 1), side.get(j), side.get(j + 1))) {
          return Optional.of(new Crossing(i + 1, j));
        }
      }
    }
    return pinch(side);
  }

  // Two stretches cut each other when the ends of each lie on either side of the other. Ends that
  // only touch do not count: points of a sharp stem may fall together.
  private static boolean cut(Vector3 a, Vector3 b, Vector3 c, Vector3 d) {
    return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
  }

  private static double turn(Vector3 a, Vector3 b, Vector3 c) {
    return (b.y() - a.y()) * (c.z() - a.z()) - (b.z() - a.z()) * (c.y() - a.y());
  }

  /** An outline that leaves the middle line, returns to it, and leaves it again. */
  private static Optional<Crossing> pinch(List<Vector3> side) {
    int left = 0;
    for (int i = 1; i < side.size(); i++) {
      if (side.get(i).y() == 0 && left > 0 && anyOut(side.subList(i, side.size()))) {
        return Optional.of(new Crossing(left, i));
      }
      left = side.get(i).y() == 0 ? left : i;
    }
    return Optional.empty();
  }

  private static boolean anyOut(List<Vector3> rest) {
    return rest.stream().anyMatch(p -> p.y() != 0);
  }
}
