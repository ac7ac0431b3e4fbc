package thwartwise.loadcase;

import java.util.Comparator;
import java.util.OptionalDouble;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Freeboard;

/**
 * The lowest edge above the water over every pose a loaded boat reaches, less the allowance.
 *
 * @param height m; empty when there is no stable equilibrium, then {@code rest} says why
 * @param at the edge; blank without a height
 * @param stream by how much a current raises the water at that end, m
 */
public record LowestEdge(
    OptionalDouble height, boolean assessed, Equilibria rest, String at, double stream) {

  public static LowestEdge of(Equilibria rest, LoadedBoat boat) {
    return of(rest, boat, StreamHead.NONE);
  }

  /** The same in a current that raises the water at one end. */
  public static LowestEdge of(Equilibria rest, LoadedBoat boat, StreamHead head) {
    if (!rest.exist()) {
      return new LowestEdge(OptionalDouble.empty(), rest.assessed(), rest, "", 0);
    }
    if (!rest.allStable()) {
      return new LowestEdge(OptionalDouble.empty(), true, rest, "", 0);
    }
    Freeboard least =
        rest.reached().stream()
            .map(
                p -> Freeboard.least(head.lowered(boat.model().edges(), p.plane().up()), p.plane()))
            .min(Comparator.comparingDouble(Freeboard::height))
            .orElseThrow();
    double height = least.height() - boat.allowance().freeboardLoss();
    return new LowestEdge(OptionalDouble.of(height), true, rest, least.at(), head.height());
  }
}
