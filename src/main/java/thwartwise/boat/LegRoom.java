package thwartwise.boat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * Where the legs of somebody seated stand: under the seat, or, where a chamber stands there, on the
 * floor before or behind it, whichever is nearer, and of two as near the one nearer amidships.
 * Where there is no such floor they stay where they are and lift nothing in the chamber.
 */
record LegRoom(BoatModel model) {
  /** From the middle of a seated body to the middle of the feet on the floor, m (judgement). */
  private static final double REACH = 0.60;

  /** The tape's doing: what legs may share with a chamber or with the skin. */
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

  // What the space's block has in common with the box is no less than what the space has.
  private boolean leavesFree(Space space, Box box) {
    Box block = space.solid().boundingBox();
    double most = SLACK * box.volume();
    return !block.overlaps(box) || block.common(box).volume() <= most || common(space, box) <= most;
  }

  private List<Space> inTheWay(Box box) {
    return model.spaces().stream()
        .filter(s -> s.solid().boundingBox().overlaps(box))
        .filter(s -> common(s, box) > Overlap.NEGLIGIBLE)
        .toList();
  }

  private double common(Space space, Box box) {
    return model.form().chamber(space.box(), box).volume();
  }

  /** Before and behind a chamber, as far across and as high as they are. */
  private static Stream<Box> besides(Space space, Box legs) {
    Span along = space.solid().extent(ALONG);
    double length = legs.x().length();
    return Stream.of(
            new Span(along.to(), along.to() + length),
            new Span(along.from() - length, along.from()))
        .map(span -> new Box(span, legs.y(), legs.z()));
  }

  private boolean hasFloor(Box box) {
    return model.inside(box).volume() >= (1 - SLACK) * box.volume();
  }
}
