package thwartwise.spread;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.spread.CrewMargins.Asked;
import thwartwise.spread.CrewMargins.Figure;

/**
 * Computed figures of one boat with a measurement moved and a crew in it. When a search is repeated
 * with a larger allowance for some seatings, most of its crews are the same. Thread-safe; for one
 * boat and its rules.
 */
public final class CaseFigures {
  private final Map<VariedBoat, Map<Asked, List<Figure>>> known = new ConcurrentHashMap<>();

  /** The figures of one boat, to which more are added. */
  Map<Asked, List<Figure>> of(VariedBoat boat) {
    return known.computeIfAbsent(boat, b -> new ConcurrentHashMap<>());
  }
}
