package thwartwise.hull;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;

/**
 * A solid kept in slices across the boat, so that the many boxes that are cut out of it are each
 * cut out of few triangles.
 */
final class Slices {
  /** About as long as a seated body, m. */
  private static final double WIDE = 0.25;

  /** Boxes remembered: those of people, of whom the same ones sit in many loadings of the hull. */
  static final int MOST = 20_000;

  private final Solid solid;
  private final Map<Slice, Solid> slices = new ConcurrentHashMap<>();
  private final Map<Box, Solid> parts = new ConcurrentHashMap<>();

  /** From one multiple of the width to another. */
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
