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
 * in a way that the program does not cover. SI; {@code source} is the limit's own. Records store
 * the names of these types and of their components, so they are never renamed.
 */
public sealed interface ExcludedUse {

  record UnderSail() implements ExcludedUse {}

  /** It tows, or is towed faster than a walk. */
  record Towing() implements ExcludedUse {}

  /** A name suggests more than one hull. */
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

  /** The current could carry the boat to a weir, sluice or fall. */
  record Weir() implements ExcludedUse {}

  record FarOffshore(double metres, double most, String source) implements ExcludedUse {}

  /**
   * Our own limits are not written for such a boat.
   *
   * @param byAnyRule whether no other available rule set covers it either
   * @param why which property of the boat is not covered
   * @param source the reason for the bound; blank where none is stated
   */
  record NotCovered(boolean byAnyRule, ScopeMismatch why, String source) implements ExcludedUse {}

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

    /** The stations measure one hull; further hulls can be seen only in the names of things. */
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
