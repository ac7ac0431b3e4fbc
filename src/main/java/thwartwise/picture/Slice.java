package thwartwise.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;

/**
 * A solid cut across at one place along the boat: the edges of the cut, each the piece of one
 * triangle.
 */
final class Slice {
  /** The distance of a piece of the lid from the line between the rails, m. */
  private static final double ON_THE_LID = 0.002;

  private Slice() {}

  /** The pieces in no order, each with its two ends. */
  static List<List<Vector3>> at(Solid solid, double x) {
    List<List<Vector3>> pieces = new ArrayList<>();
    for (int t = 0; t < solid.triangleCount(); t++) {
      piece(solid.triangle(t), x).ifPresent(pieces::add);
    }
    return pieces;
  }

  private static Optional<List<Vector3>> piece(List<Vector3> corners, double x) {
    List<Vector3> ends = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Vector3 a = corners.get(i);
      Vector3 b = corners.get((i + 1) % 3);
      // One side counts as meeting the cut and the other not, so that every piece has two ends.
      if (a.x() < x != b.x() < x) {
        ends.add(a.toward(b, (x - a.x()) / (b.x() - a.x())));
      }
    }
    return ends.size() == 2 ? Optional.of(ends) : Optional.empty();
  }

  /** The pieces without those of the lid, which lie between the two rails. */
  static List<List<Vector3>> withoutLid(
      List<List<Vector3>> pieces, Vector3 port, Vector3 starboard) {
    return pieces.stream()
        .filter(piece -> !piece.stream().allMatch(p -> isBetween(p, port, starboard)))
        .toList();
  }

  private static boolean isBetween(Vector3 p, Vector3 port, Vector3 starboard) {
    double breadth = port.y() - starboard.y();
    double share = breadth > 0 ? (port.y() - p.y()) / breadth : 0;
    return Math.abs(p.z() - (port.z() + share * (starboard.z() - port.z()))) < ON_THE_LID;
  }

  /** The pieces connected end to end from one of them on; unconnected ones remain. */
  static List<Vector3> loop(List<List<Vector3>> pieces) {
    List<List<Vector3>> left = new ArrayList<>(pieces);
    List<Vector3> loop = new ArrayList<>();
    if (left.isEmpty()) {
      return loop;
    }
    loop.addAll(left.remove(0));
    while (!left.isEmpty()) {
      Optional<Vector3> next = takeNext(loop.get(loop.size() - 1), left);
      if (next.isEmpty()) {
        return loop;
      }
      loop.add(next.get());
    }
    return loop;
  }

  private static Optional<Vector3> takeNext(Vector3 end, List<List<Vector3>> left) {
    for (List<Vector3> piece : left) {
      for (int i = 0; i < 2; i++) {
        if (piece.get(i).minus(end).norm() < 1e-7) {
          left.remove(piece);
          return Optional.of(piece.get(1 - i));
        }
      }
    }
    return Optional.empty();
  }
}
