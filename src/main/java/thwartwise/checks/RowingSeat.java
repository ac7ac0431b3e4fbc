package thwartwise.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.Outfit.Rowlocks;
import thwartwise.boat.Place;
import thwartwise.rules.RuleSet;

/**
 * A seat and the rowlocks used from it: the rower faces aft, so they are aft of the seat.
 *
 * @param aft from the middle of the rower back to the rowlocks, m; negative where they are forward
 * @param best distance, m
 * @param off the tolerance about the best distance, m
 */
public record RowingSeat(Place place, double aft, double best, double off) {

  /**
   * The seat from which a pair is rowed: the stated one, where no other pair is better placed for
   * it, or else the seat across the boat for which it is best placed; none where nobody sits so.
   */
  public static Optional<RowingSeat> of(Boat boat, Rowlocks pair, RuleSet rules) {
    return stated(boat)
        .filter(place -> isBestOf(boat.outfit().rowlocks(), pair, place, rules))
        .map(place -> to(place, pair, rules))
        .or(
            () ->
                boat.places().stream()
                    .filter(place -> !place.isToOneSide())
                    .map(place -> to(place, pair, rules))
                    .min(Comparator.comparingDouble(RowingSeat::miss)));
  }

  private static Optional<Place> stated(Boat boat) {
    return boat.kit().stream()
        .filter(Kit::isOars)
        .flatMap(oars -> oars.workedFrom().flatMap(boat::place).stream())
        .findFirst();
  }

  private static boolean isBestOf(List<Rowlocks> pairs, Rowlocks pair, Place place, RuleSet rules) {
    double miss = to(place, pair, rules).miss();
    return pairs.stream().allMatch(other -> to(place, other, rules).miss() >= miss);
  }

  private static RowingSeat to(Place place, Rowlocks pair, RuleSet rules) {
    double best = rules.value("rowlock-aft");
    return new RowingSeat(place, aft(place, pair, best), best, rules.value("rowlock-off"));
  }

  /** On a seat with a length the rower sits at the best distance. */
  private static double aft(Place place, Rowlocks pair, double best) {
    double wanted = pair.x() + best;
    double sits = Math.max(place.along().from(), Math.min(place.along().to(), wanted));
    return sits - pair.x();
  }

  private double miss() {
    return Math.abs(aft - best);
  }

  /** False for a bench along one side, where nobody can use two oars. */
  public boolean isInReach() {
    return !place.isToOneSide() && margin().met();
  }

  public Margin margin() {
    return Margin.atMost(off, OptionalDouble.of(miss()), Unit.METRE);
  }
}
