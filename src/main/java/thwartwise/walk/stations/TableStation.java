package thwartwise.walk.stations;

import java.util.List;

/**
 * A station of a table.
 *
 * @param name as the table has it; blank when it has none
 * @param points keel to rail
 */
record TableStation(String name, List<TablePoint> points) {
  TableStation {
    points = List.copyOf(points);
  }

  /** Whether all of its points lie equally far forward. */
  boolean isPlumb() {
    return points.stream().allMatch(p -> p.x().value().compareTo(points.get(0).x().value()) == 0);
  }
}
