package thwartwise.afloat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.Side;
import thwartwise.hull.FloodPoint;

/**
 * The swing of a boat whose load moves all at once: to where the work of the moved weight equals
 * the righting work, that is where the potential energy is back to its value at the moment of the
 * move. Trim and sinkage follow; drag takes no energy.
 *
 * @param heel toward the side where it turns back, rad; empty when it floods first or never does
 * @param flooding heel at which the first edge reaches the water, rad; empty when none does up to a
 *     right angle
 * @param floodingAt the edge that floods; blank when nothing does
 * @param spare righting work left when it floods, N·m; negative when it floods before it turns
 *     back; empty when nothing floods
 */
public record DynamicHeel(
    OptionalDouble heel, OptionalDouble flooding, String floodingAt, OptionalDouble spare) {
  private static final double STEP = Math.toRadians(2);
  private static final double FURTHEST = Math.toRadians(90);
  private static final double HEEL_TOLERANCE = 1e-7;

  /**
   * @param after the boat with its load already moved
   * @param from heel toward the side at the moment of the move, rad; negative when it then heels
   *     the other way
   * @return empty when no trim balances the boat at the start
   */
  public static Optional<DynamicHeel> of(
      FloatingBody after, double from, Side side, List<FloodPoint> edges) {
    return of(after, from, side, edges, false);
  }

  /**
   * The same where only the question whether it turns back before it floods matters: either angle
   * is given to a step of two degrees, and none that comes later.
   */
  public static Optional<DynamicHeel> nearly(
      FloatingBody after, double from, Side side, List<FloodPoint> edges) {
    return of(after, from, side, edges, true);
  }

  private static Optional<DynamicHeel> of(
      FloatingBody after, double from, Side side, List<FloodPoint> edges, boolean nearly) {
    HeelWalk walk = new HeelWalk(side, after, edges);
    double weight = after.density() * Gravity.STANDARD;
    return walk.start(from).map(start -> swung(walk, from, start, weight, nearly));
  }

  private static DynamicHeel swung(
      HeelWalk walk, double from, HeldHeel start, double weight, boolean nearly) {
    if (walk.wet(start)) {
      return new DynamicHeel(
          OptionalDouble.empty(),
          OptionalDouble.of(from),
          walk.lowest(start),
          OptionalDouble.of(0));
    }
    boolean drivenBack = walk.point(from, start).arm() >= 0;
    OptionalDouble turns = drivenBack ? OptionalDouble.of(from) : OptionalDouble.empty();
    double heel = from;
    HeldHeel here = start;
    while (heel < FURTHEST) {
      double next = heel + STEP;
      Optional<HeldHeel> there = walk.balanced(next, here);
      if (there.isEmpty()) {
        break;
      }
      boolean turnedBack = turns.isPresent() || there.get().energy() >= start.energy();
      if (nearly && next <= FURTHEST && turnedBack != walk.wet(there.get())) {
        return turnedBack ? turnedBack(next) : flooded(walk, start, next, there.get(), weight);
      }
      if (turns.isEmpty() && turnedBack) {
        turns = turning(walk, start.energy(), heel, here, next, there.get());
      }
      if (walk.wet(there.get())) {
        HeelWalk.Flood flood = walk.between(heel, here, next, there.get());
        boolean before = turns.isPresent() && turns.getAsDouble() < flood.heel();
        return new DynamicHeel(
            before ? turns : OptionalDouble.empty(),
            OptionalDouble.of(flood.heel()),
            walk.lowest(flood.at()),
            OptionalDouble.of(weight * (flood.at().energy() - start.energy())));
      }
      heel = next;
      here = there.get();
    }
    return new DynamicHeel(turns, OptionalDouble.empty(), "", OptionalDouble.empty());
  }

  private static DynamicHeel turnedBack(double heel) {
    return new DynamicHeel(
        OptionalDouble.of(heel), OptionalDouble.empty(), "", OptionalDouble.empty());
  }

  private static DynamicHeel flooded(
      HeelWalk walk, HeldHeel start, double heel, HeldHeel at, double weight) {
    return new DynamicHeel(
        OptionalDouble.empty(),
        OptionalDouble.of(heel),
        walk.lowest(at),
        OptionalDouble.of(weight * (at.energy() - start.energy())));
  }

  /** The heel between two others at which the energy is back. */
  private static OptionalDouble turning(
      HeelWalk walk, double energy, double low, HeldHeel from, double high, HeldHeel to) {
    Bracket bracket = new Bracket(low, energy - from.energy(), high, energy - to.energy());
    while (bracket.width() > HEEL_TOLERANCE) {
      double middle = bracket.next(HEEL_TOLERANCE);
      Optional<HeldHeel> there = walk.balanced(middle, from);
      bracket.cut(middle, there.map(s -> energy - s.energy()).orElse(Double.NaN));
    }
    return OptionalDouble.of(bracket.high());
  }
}
