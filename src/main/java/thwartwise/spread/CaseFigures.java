package thwartwise.spread;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.spread.CrewMargins.Asked;
import thwartwise.spread.CrewMargins.Figure;

/**
 * Figures already worked out of one boat with a measurement moved and a crew in it. Where a search
 * is run again with more taken off some seatings, most crews that are looked at are the same. Safe
 * among threads; of one boat and its rules.
 */
public final class CaseFigures {
  private final Map<VariedBoat, Map<Asked, List<Figure>>> known = new ConcurrentHashMap<>();

  /** Those of one boat, to be added to. */
  Map<Asked, List<Figure>> of(VariedBoat boat) {
    return known.computeIfAbsent(boat, b -> new ConcurrentHashMap<>());
  }
}
