package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import thwartwise.geometry.Box;

/** Boxes added one after another, each cut free of those before it, so that none counts twice. */
final class DisjointBoxes {
  private final List<Box> taken = new ArrayList<>();

  /** The part that no box before it takes up. */
  List<Box> place(Box box) {
    List<Box> free = List.of(box);
    for (Box other : taken) {
      if (other.overlaps(box)) {
        free = free.stream().flatMap(b -> b.without(other).stream()).toList();
      }
    }
    taken.add(box);
    return free;
  }
}
