package thwartwise.boat;

import java.util.ArrayList;
import java.util.List;
import thwartwise.hull.HullForm;

/**
 * A key of everything that decides how a boat floats, apart from people and masses. Equal keys
 * belong to boats with the same solids, whatever else was changed between them.
 */
public final class BuoyancyKey {
  private final HullForm form;
  private final List<Object> parts;
  private final int hash;

  private BuoyancyKey(HullForm form, List<Object> parts) {
    this.form = form;
    this.parts = parts;
    this.hash = 31 * System.identityHashCode(form) + parts.hashCode();
  }

  /** The key of the boat dry inside: the hull and where water comes aboard. */
  static BuoyancyKey dry(BoatModel model) {
    return new BuoyancyKey(model.form(), List.of(model.waterDensity(), model.edges()));
  }

  /**
   * The key of the boat open to the sea: every chamber, because no body lifts where a chamber is;
   * the share of it that counts; and the kit that lifts.
   */
  static BuoyancyKey swamped(BoatModel model) {
    List<Object> parts = new ArrayList<>();
    parts.add(model.waterDensity());
    for (Space space : model.spaces()) {
      parts.add(List.of(space.box(), space.counting().share()));
    }
    for (Kit kit : model.boat().kit()) {
      if (kit.fastened() && kit.volume().isPresent()) {
        parts.add(List.of(kit.at(), kit.mass(), kit.volume().get()));
      }
    }
    return new BuoyancyKey(model.form(), List.copyOf(parts));
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof BuoyancyKey key
            && hash == key.hash
            && form == key.form
            && parts.equals(key.parts);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
