package thwartwise.geometry;

import java.util.Arrays;

/** The outlines of the caps of a solid that is being cut, as directed edges in flat arrays. */
final class Outlines {
  private int[] edges = new int[192];
  private int used;

  /** Adds an edge, with the solid of the cap on the same side as the cap's triangles have it. */
  void add(int cap, int from, int to) {
    if (used == edges.length) {
      edges = Arrays.copyOf(edges, 2 * edges.length);
    }
    edges[used] = cap;
    edges[used + 1] = from;
    edges[used + 2] = to;
    used += 3;
  }

  void clear() {
    used = 0;
  }

  int size() {
    return used / 3;
  }

  int cap(int i) {
    return edges[3 * i];
  }

  int from(int i) {
    return edges[3 * i + 1];
  }

  int to(int i) {
    return edges[3 * i + 2];
  }
}
