package thwartwise.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;

/**
 * Why nothing is recommended for a boat, whatever its figures: it is driven, loaded, built or used
 * in a way that is not worked out here. SI; {@code source} is the limit's own. Records keep the
 * names of these types and of their parts for good.
 */
public sealed interface ExcludedUse {

  record UnderSail() implements ExcludedUse {}

  /** It tows, or is towed faster than a walk. */
  record Towing() implements ExcludedUse {}

  /** Something is called by a name that speaks of more than one hull. */
  record SeveralHulls(String name) implements ExcludedUse {}

  /** More petrol than one portable tank. */
  record MuchPetrol(double mostKg, List<String> vessels) implements ExcludedUse {
    public MuchPetrol {
      vessels = List.copyOf(vessels);
    }
  }

  record BreakingWaves() implements ExcludedUse {}

  record HighWaves(double metres, double most, String source) implements ExcludedUse {}

  record StrongWind(double metresASecond, double most, String source) implements ExcludedUse {}

  record StrongCurrent(double metresASecond, double most, String source) implements ExcludedUse {}

  /** A weir, sluice or fall the boat could be carried to. */
  record Weir() implements ExcludedUse {}

  record FarOffshore(double metres, double most, String source) implements ExcludedUse {}

  /**
   * Our own limits are not written for such a boat.
   *
   * @param byAnyRule whether no other rule set at hand is, either
   * @param why what of it is otherwise, in words
   * @param source why the limits end there; blank where they do not say
   */
  record NotCovered(boolean byAnyRule, String why, String source) implements ExcludedUse {}

  /** Every reason; none when the boat and its waters are covered. */
  static List<ExcludedUse> of(BoatModel model, RuleSet rules) {
    List<ExcludedUse> all = new ArrayList<>();
    all.addAll(Reasons.driven(model.boat().propulsion()));
    all.addAll(Reasons.hulls(model.boat()));
    all.addAll(Reasons.petrol(model.boat().kit(), rules));
    all.addAll(RoughWater.of(rules, model.boat().waters()));
    return all;
  }

  /** What of the boat and its kit is outside. */
  final class Reasons {
    private static final List<String> HULLS =
        List.of("catamaran", "trimaran", "proa", "outrigger", "second hull", "two hulls");
    private static final List<String> TANK = List.of("tank", "can");

    private Reasons() {}

    private static List<ExcludedUse> driven(Propulsion propulsion) {
      if (propulsion instanceof Propulsion.Sail) {
        return List.of(new UnderSail());
      }
      return propulsion instanceof Propulsion.Tow ? List.of(new Towing()) : List.of();
    }

    /** The stations measure one hull; more of them show only in what somebody calls things. */
    private static List<ExcludedUse> hulls(Boat boat) {
      return Stream.concat(Stream.of(boat.name()), boat.kit().stream().map(Kit::name))
          .filter(name -> HULLS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::contains))
          .<ExcludedUse>map(SeveralHulls::new)
          .toList();
    }

    private static List<ExcludedUse> petrol(List<Kit> kit, RuleSet rules) {
      List<Kit> vessels = kit.stream().filter(Kit::holdsPetrol).toList();
      double mass = vessels.stream().mapToDouble(Kit::mass).sum();
      double most = rules.value("petrol-most");
      boolean severalTanks =
          vessels.stream().filter(vessel -> vessel.nameContainsAny(TANK)).count() > 1;
      return mass <= most && !severalTanks
          ? List.of()
          : List.of(new MuchPetrol(most, vessels.stream().map(Kit::name).toList()));
    }
  }
}
