package thwartwise.sheet;

import java.util.HashMap;
import java.util.Map;
import thwartwise.boat.Boat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.AnchorBottom;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;

/**
 * The known rowlocks, cleats, anchor line and leaks, as answers to the walk. Hatches belong to the
 * openings.
 */
final class PrefilledOutfit {
  private final Map<String, String> answers = new HashMap<>();
  private final UnitFormat units;
  private int count;

  private PrefilledOutfit(UnitFormat units) {
    this.units = units;
  }

  /** Empty if nobody said anything about it, so that it can be filled in by hand. */
  static Map<String, String> of(Boat boat) {
    PrefilledOutfit known = new PrefilledOutfit(new UnitFormat(boat.units()));
    boat.outfit().rowlocks().forEach(pair -> known.next("rowlocks", "pins", known.tape(pair.x())));
    boat.cleats().forEach(known::cleat);
    known.anchor(boat.outfit());
    boat.outfit().leaks().forEach(known::leak);
    if (known.count > 0) {
      known.answers.put("outfit." + (known.count + 1) + ".any", "no");
    }
    return Map.copyOf(known.answers);
  }

  private void next(String what, String key, String typed) {
    count++;
    put("any", "yes");
    put("what", what);
    put(key, typed);
  }

  private void cleat(Cleat cleat) {
    next("cleat", "name", cleat.name());
    put("x", tape(cleat.at().x()));
    put("y", tape(cleat.at().y()));
    put("z", tape(cleat.at().z()));
  }

  private void anchor(Outfit outfit) {
    if (outfit.isAnchorLineKnown()) {
      next("anchor", "line", tape(outfit.anchorLine().orElseThrow()));
      put("depth", tape(outfit.anchorDepth().orElseThrow()));
      put("bottom", outfit.anchorBottom().map(AnchorBottom::word).orElse(""));
    }
  }

  private void leak(SeamLeak leak) {
    next("leak", "seam", leak.seam());
    put("litres", units.jug(leak.volume()));
    put("minutes", Rounding.plain(leak.time() / 60) + " min");
  }

  private String tape(double metres) {
    return units.tape(metres);
  }

  private void put(String key, String typed) {
    answers.put("outfit." + count + "." + key, typed);
  }
}
