package thwartwise.boat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * The place of a seated person's legs: under the seat or, if a chamber is there, on the floor
 * before or behind it, whichever is nearer; of two equally near, the one nearer amidships. Without
 * such a floor they stay where they are and lift nothing in the chamber.
 */
record LegRoom(BoatModel model) {
  /**
   * The distance from the middle of a seated body to the middle of the feet on the floor, m
   * (judgement).
   */
  private static final double REACH = 0.60;

  /** The volume that legs may share with a chamber or with the skin, which is the tape's error. */
  private static final double SLACK = 0.05;

  private static final Vector3 ALONG = Vector3.of(1, 0, 0);

  Box of(Box legs) {
    if (isFree(legs)) {
      return legs;
    }
    double x = legs.x().middle();
    double middle = model.form().outside().extent(ALONG).middle();
    return inTheWay(legs).stream()
        .flatMap(space -> besides(space, legs))
        .filter(box -> Math.abs(box.x().middle() - x) <= REACH)
        .sorted(
            Comparator.comparingDouble((Box box) -> Math.rint(1e6 * Math.abs(box.x().middle() - x)))
                .thenComparingDouble(box -> Math.abs(box.x().middle() - middle)))
        .filter(box -> isFree(box) && hasFloor(box))
        .findFirst()
        .orElse(legs);
  }

  private boolean isFree(Box box) {
    return model.spaces().stream().allMatch(space -> leavesFree(space, box));
  }

  // The box shares at least as much with the space's block as with the space.
  private boolean leavesFree(Space space, Box box) {
    Box block = space.solid().boundingBox();
    double most = SLACK * box.volume();
    return !block.overlaps(box)
        || block.common(box).volume() <= most
        || space.solid().volumeWithin(box) <= most;
  }

  private List<Space> inTheWay(Box box) {
    return model.spaces().stream()
        .filter(s -> s.solid().volumeWithin(box) > Overlap.NEGLIGIBLE)
        .toList();
  }

  /** The places before and behind a chamber, as far across and as high as the legs. */
  private static Stream<Box> besides(Space space, Box legs) {
    Span along = space.solid().extent(ALONG);
    double length = legs.x().length();
    return Stream.of(
            new Span(along.to(), along.to() + length),
            new Span(along.from() - length, along.from()))
        .map(span -> new Box(span, legs.y(), legs.z()));
  }

  private boolean hasFloor(Box box) {
    return model.form().inside().volumeWithin(box) >= (1 - SLACK) * box.volume();
  }
}
