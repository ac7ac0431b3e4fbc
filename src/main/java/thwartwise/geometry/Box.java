package thwartwise.geometry;

import java.util.ArrayList;
import java.util.List;

/** Immutable block with faces along the axes, metres. A span without end means "to the hull". */
public record Box(Span x, Span y, Span z) {

  /** A cube of the given volume about a centre. */
  public static Box cube(Vector3 centre, double volume) {
    double side = Math.cbrt(volume);
    return upright(centre.x(), centre.y(), centre.z() - side / 2, side * side, side);
  }

  /** A square post about a vertical line: its foot, the area of its foot, its height. */
  public static Box upright(double x, double y, double foot, double area, double height) {
    double half = Math.sqrt(area) / 2;
    return new Box(
        new Span(x - half, x + half), new Span(y - half, y + half), new Span(foot, foot + height));
  }

  public Box mirrored() {
    return new Box(x, y.mirrored(), z);
  }

  public boolean overlaps(Box o) {
    return x.overlaps(o.x) && y.overlaps(o.y) && z.overlaps(o.z);
  }

  /** The overlap of both; only for boxes that overlap. */
  public Box common(Box o) {
    return new Box(x.common(o.x), y.common(o.y), z.common(o.z));
  }

  public boolean contains(Vector3 p) {
    return x.contains(p.x()) && y.contains(p.y()) && z.contains(p.z());
  }

  public double volume() {
    return x.length() * y.length() * z.length();
  }

  /** This box without the other: up to six boxes that do not overlap. */
  public List<Box> without(Box o) {
    if (!overlaps(o)) {
      return List.of(this);
    }
    List<Box> rest = new ArrayList<>();
    Box left = this;
    if (left.x.from() < o.x.from()) {
      rest.add(new Box(new Span(left.x.from(), o.x.from()), left.y, left.z));
      left = new Box(new Span(o.x.from(), left.x.to()), left.y, left.z);
    }
    if (left.x.to() > o.x.to()) {
      rest.add(new Box(new Span(o.x.to(), left.x.to()), left.y, left.z));
      left = new Box(new Span(left.x.from(), o.x.to()), left.y, left.z);
    }
    if (left.y.from() < o.y.from()) {
      rest.add(new Box(left.x, new Span(left.y.from(), o.y.from()), left.z));
      left = new Box(left.x, new Span(o.y.from(), left.y.to()), left.z);
    }
    if (left.y.to() > o.y.to()) {
      rest.add(new Box(left.x, new Span(o.y.to(), left.y.to()), left.z));
      left = new Box(left.x, new Span(left.y.from(), o.y.to()), left.z);
    }
    if (left.z.from() < o.z.from()) {
      rest.add(new Box(left.x, left.y, new Span(left.z.from(), o.z.from())));
      left = new Box(left.x, left.y, new Span(o.z.from(), left.z.to()));
    }
    if (left.z.to() > o.z.to()) {
      rest.add(new Box(left.x, left.y, new Span(o.z.to(), left.z.to())));
    }
    return rest;
  }
}
