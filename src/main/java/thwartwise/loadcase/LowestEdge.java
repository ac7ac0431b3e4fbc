package thwartwise.loadcase;

import java.util.Comparator;
import java.util.OptionalDouble;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Freeboard;

/**
 * The lowest edge above the water over every pose a loaded boat comes to, less the allowance.
 *
 * @param height m; empty when there is no steady rest, and {@code words} says why
 */
public record LowestEdge(OptionalDouble height, boolean assessed, String words) {

  public static LowestEdge of(Equilibria rest, LoadedBoat boat) {
    return of(rest, boat, StreamHead.NONE);
  }

  /** The same in a stream that stands higher at one end. */
  public static LowestEdge of(Equilibria rest, LoadedBoat boat, StreamHead head) {
    if (!rest.exist()) {
      return new LowestEdge(OptionalDouble.empty(), rest.assessed(), rest.noneBecause());
    }
    if (!rest.allStable()) {
      return new LowestEdge(OptionalDouble.empty(), true, "it does not come to a steady rest");
    }
    Freeboard least =
        rest.reached().stream()
            .map(
                p -> Freeboard.least(head.lowered(boat.model().edges(), p.plane().up()), p.plane()))
            .min(Comparator.comparingDouble(Freeboard::height))
            .orElseThrow();
    double height = least.height() - boat.allowance().freeboardLoss();
    return new LowestEdge(
        OptionalDouble.of(height), true, "lowest at the " + least.at() + head.words(boat.units()));
  }
}
