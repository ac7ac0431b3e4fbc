package thwartwise.checks;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose;

/** Figures of the poses at which a boat comes to rest. */
final class StableRest {
  private StableRest() {}

  /** The greatest of a figure over every pose; empty without a steady rest. */
  static OptionalDouble greatest(Equilibria rest, ToDoubleFunction<Pose> figure) {
    return rest.allStable()
        ? rest.reached().stream().mapToDouble(figure).max()
        : OptionalDouble.empty();
  }

  static OptionalDouble least(Equilibria rest, ToDoubleFunction<Pose> figure) {
    return rest.allStable()
        ? rest.reached().stream().mapToDouble(figure).min()
        : OptionalDouble.empty();
  }

  /** The heel, rad; for a boat on end or on its side, its whole tilt. */
  static double heel(Pose pose) {
    return pose.isUpright() ? Math.abs(pose.heel()) : pose.tilt();
  }
}
