package thwartwise.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.Place;
import thwartwise.boat.Rowlocks;
import thwartwise.rules.RuleSet;

/**
 * A seat and the rowlocks one uses from it: the rower faces aft, so they stand aft of the seat.
 *
 * @param aft from the middle of the rower back to the rowlocks, m; negative where they are forward
 * @param best distance, m
 * @param off how far from the best one still rows, m
 */
public record RowingSeat(Place place, double aft, double best, double off) {

  /** The seat across the boat from which a pair is rowed best; none where nobody sits so. */
  public static Optional<RowingSeat> nearest(List<Place> places, Rowlocks pair, RuleSet rules) {
    double best = rules.value("rowlock-aft");
    double off = rules.value("rowlock-off");
    return places.stream()
        .filter(place -> !place.isToOneSide())
        .map(place -> new RowingSeat(place, aft(place, pair, best), best, off))
        .min(Comparator.comparingDouble(RowingSeat::miss));
  }

  /** On a seat with a length the rower slides to where it is best. */
  private static double aft(Place place, Rowlocks pair, double best) {
    double wanted = pair.x() + best;
    double sits = Math.max(place.along().from(), Math.min(place.along().to(), wanted));
    return sits - pair.x();
  }

  private double miss() {
    return Math.abs(aft - best);
  }

  public boolean isInReach() {
    return margin().met();
  }

  public Margin margin() {
    return Margin.atMost(off, OptionalDouble.of(miss()), Unit.METRE);
  }
}
