package thwartwise.loadcase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Among loadings that differ afloat only in the distance of the common centre of all weights from
 * the middle line, the one with the greatest distance. That distance alone heels a symmetric boat,
 * so it heels farthest there and no other loading brings an edge lower; the side does not matter.
 * Of two equally far off it is the first, so that the last bits do not choose the side.
 *
 * <p>Where loose water stands to one side, the distance is that toward the water: weights and water
 * on the same side heel the boat farthest, unless the weights of another loading are farther out on
 * the opposite side. All are kept then.
 */
public final class FarthestOff {
  private FarthestOff() {}

  /** The loadings that decide whether all of them meet a limit on heel or freeboard. */
  public static List<LoadedBoat> of(List<LoadedBoat> ways) {
    Map<Object, List<LoadedBoat>> alike = new LinkedHashMap<>();
    for (LoadedBoat way : ways) {
      alike.computeIfAbsent(way.afloatButForHeel().orElse(way), key -> new ArrayList<>()).add(way);
    }
    return alike.values().stream().flatMap(loadings -> decisive(loadings).stream()).toList();
  }

  private static List<LoadedBoat> decisive(List<LoadedBoat> alike) {
    LoadedBoat farthest = alike.get(0);
    for (LoadedBoat way : alike) {
      if (way.offTheMiddle() > farthest.offTheMiddle()) {
        farthest = way;
      }
    }
    double most = farthest.offTheMiddle();
    return alike.stream().allMatch(way -> -way.offTheMiddle() <= most) ? List.of(farthest) : alike;
  }
}
