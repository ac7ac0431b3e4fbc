package thwartwise.hull;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;

/**
 * A solid kept in slices across the boat, so that each of many boxes is cut out of few triangles.
 */
final class Slices {
  /** The width of a slice, about that of a seated body, m. */
  private static final double WIDE = 0.25;

  /** The number of boxes in the cache: those of people, the same in many loadings of the hull. */
  static final int MOST = 20_000;

  private final Solid solid;
  private final Map<Slice, Solid> slices = new ConcurrentHashMap<>();
  private final Map<Box, Solid> parts = new ConcurrentHashMap<>();

  /** The slice from one multiple of the width to the next. */
  private record Slice(long from, long to) {
    static Slice about(Span along) {
      return new Slice((long) Math.floor(along.from() / WIDE), (long) Math.ceil(along.to() / WIDE));
    }

    Box box() {
      return new Box(new Span(from * WIDE, to * WIDE), Span.ALL, Span.ALL);
    }
  }

  Slices(Solid solid) {
    this.solid = solid;
  }

  /** The part of the solid inside a box whose length is finite. */
  Solid within(Box box) {
    Solid before = parts.get(box);
    if (before != null) {
      return before;
    }
    Solid part = cut(box);
    if (parts.size() < MOST) {
      parts.put(box, part);
    }
    return part;
  }

  private Solid cut(Box box) {
    return slices
        .computeIfAbsent(Slice.about(box.x()), slice -> solid.within(slice.box()))
        .within(box);
  }
}
