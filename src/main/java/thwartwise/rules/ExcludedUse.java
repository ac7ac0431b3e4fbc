package thwartwise.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/**
 * Why nothing is recommended for a boat, whatever its figures: it is driven, loaded, built or used
 * in a way that is not worked out here. To which length and power our own set applies it says
 * itself.
 */
public final class ExcludedUse {
  private static final String SO = ", so nothing is recommended";
  private static final List<String> HULLS =
      List.of("catamaran", "trimaran", "proa", "outrigger", "second hull", "two hulls");
  private static final List<String> TANK = List.of("tank", "can");

  private ExcludedUse() {}

  /** In words, each a sentence of its own; none when the boat and its waters are covered. */
  public static List<String> reasons(BoatModel model, RuleSet rules) {
    UnitFormat units = new UnitFormat(model.boat().units());
    List<String> reasons = new ArrayList<>();
    reasons.addAll(driven(model.boat().propulsion()));
    reasons.addAll(hulls(model.boat()));
    reasons.addAll(petrol(model.boat().kit(), rules, units));
    reasons.addAll(RoughWater.reasons(rules, model.boat().waters(), units));
    return reasons.stream().map(reason -> reason + SO).toList();
  }

  private static List<String> driven(Propulsion propulsion) {
    if (propulsion instanceof Propulsion.Sail) {
      return List.of("the boat is under sail, and sailing is outside what is worked out here");
    }
    if (propulsion instanceof Propulsion.Tow) {
      return List.of(
          "the boat tows or is towed faster than a walk, and that is outside what is worked out"
              + " here");
    }
    return List.of();
  }

  /** The stations measure one hull; more of them show only in what somebody calls things. */
  private static List<String> hulls(Boat boat) {
    return Stream.concat(Stream.of(boat.name()), boat.kit().stream().map(Kit::name))
        .filter(name -> HULLS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::contains))
        .map(name -> "\"" + name + "\" speaks of more than one hull, and one is worked out here")
        .toList();
  }

  private static List<String> petrol(List<Kit> kit, RuleSet rules, UnitFormat units) {
    List<Kit> vessels = kit.stream().filter(Kit::holdsPetrol).toList();
    double mass = vessels.stream().mapToDouble(Kit::mass).sum();
    double most = rules.value("petrol-most");
    boolean severalTanks = vessels.stream().filter(ExcludedUse::isTank).count() > 1;
    if (mass <= most && !severalTanks) {
      return List.of();
    }
    return List.of(
        String.format(
            Locale.ROOT,
            "there is more petrol aboard than one portable tank of at most %s (%s)",
            units.mass(most, Side.DOWN).replace('\u00a0', ' '),
            String.join(", ", vessels.stream().map(Kit::name).toList())));
  }

  private static boolean isTank(Kit kit) {
    String name = kit.name().toLowerCase(Locale.ROOT);
    return TANK.stream().anyMatch(name::contains);
  }
}
