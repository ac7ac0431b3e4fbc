package thwartwise.checklist;

import java.util.List;
import thwartwise.boat.Boat;

/**
 * Points to be looked at on one occasion.
 *
 * @param when the occasion, in words
 * @param source where the points are from and how well they are founded
 */
public record Checklist(String name, String when, String source, List<ChecklistPoint> points) {
  public Checklist {
    points = List.copyOf(points);
  }

  /** Those asked of this boat, in their order. */
  public List<ChecklistPoint> askedOf(Boat boat) {
    return points.stream().filter(point -> point.isAskedOf(boat)).toList();
  }
}
