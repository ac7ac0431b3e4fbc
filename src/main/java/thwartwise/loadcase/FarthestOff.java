package thwartwise.loadcase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Among loadings that differ afloat only in the distance of the common centre of all weights from
 * the middle line, the one with the greatest distance. That distance alone heels a symmetric boat,
 * so it heels farthest there and no other loading brings an edge lower; the side does not matter.
 */
public final class FarthestOff {
  private FarthestOff() {}

  /**
   * The loadings that decide whether all of them meet a limit on heel or freeboard, in their order.
   */
  public static List<LoadedBoat> of(List<LoadedBoat> ways) {
    Map<Object, LoadedBoat> decisive = new LinkedHashMap<>();
    for (LoadedBoat way : ways) {
      Optional<Object> alike = way.afloatButForHeel();
      decisive.merge(alike.orElse(way), way, FarthestOff::farther);
    }
    return List.copyOf(decisive.values());
  }

  private static LoadedBoat farther(LoadedBoat one, LoadedBoat other) {
    return other.offTheMiddle() > one.offTheMiddle() ? other : one;
  }
}
