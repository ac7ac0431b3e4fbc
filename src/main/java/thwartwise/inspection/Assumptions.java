package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.Craft;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;

/** What was taken for granted because nobody measured it, in words. */
final class Assumptions {
  private Assumptions() {}

  static List<String> of(Craft craft) {
    Boat boat = craft.boat();
    List<String> all = new ArrayList<>(boat.assumptions());
    if (boat.hull().centre().isEmpty()) {
      all.add("Centre of the bare hull: estimated from the area of its skin, not measured.");
    }
    if (boat.propulsion() instanceof Propulsion.NotStated) {
      all.add("How the boat is driven is not stated: taken as rowed or paddled.");
    }
    boat.kit().stream()
        .filter(k -> k.volume().isPresent() && !k.fastened())
        .map(Kit::name)
        .forEach(n -> all.add("Kit \"" + n + "\" is not fastened: it gives no lift when swamped."));
    all.add("People sit still, seated, at their places; an unnamed adult counts 95 kg dressed.");
    all.add("Water is calm; nothing here speaks of waves, wash, current or wind.");
    return all;
  }
}
