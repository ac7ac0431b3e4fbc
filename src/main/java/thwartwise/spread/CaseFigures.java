package thwartwise.spread;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import thwartwise.spread.CrewMargins.Figure;

/**
 * Figures already worked out of one boat with a measurement moved and a crew in it. Where a search
 * is run again with more taken off some seatings, most crews that are looked at are the same. Safe
 * among threads; of one boat and its rules.
 */
public final class CaseFigures {
  private final Map<Moved, List<Figure>> known = new ConcurrentHashMap<>();

  private record Moved(VariedBoat boat, CrewCase crew) {}

  /** Not worked out within the map: other threads would wait for it. */
  List<Figure> of(VariedBoat boat, CrewCase crew, Supplier<List<Figure>> figures) {
    Moved moved = new Moved(boat, crew);
    List<Figure> before = known.get(moved);
    if (before != null) {
      return before;
    }
    List<Figure> now = figures.get();
    known.put(moved, now);
    return now;
  }
}
