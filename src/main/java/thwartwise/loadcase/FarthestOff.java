package thwartwise.loadcase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Of loadings that float alike but for how far off the middle line all weights together lie, the
 * one where they lie farthest off. A boat alike on both sides is heeled by that distance alone, so
 * it heels farthest there and no edge comes lower in another; to which side is no matter.
 */
public final class FarthestOff {
  private FarthestOff() {}

  /** Those that decide whether all of them meet a limit on heel or freeboard, in their order. */
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
