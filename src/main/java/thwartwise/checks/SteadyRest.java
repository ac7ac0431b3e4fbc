package thwartwise.checks;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose;

/** What is read off a boat's poses once it has come to rest, and what is said when it does not. */
final class SteadyRest {
  private SteadyRest() {}

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

  /** How far over it lies; a boat on end or on its side is over by its whole tilt. */
  static double heel(Pose pose) {
    return pose.isUpright() ? Math.abs(pose.heel()) : pose.tilt();
  }

  /** How it lies, plainly; blank when it lies upright. */
  static String words(Equilibria rest) {
    if (!rest.exist()) {
      return rest.noneBecause();
    }
    if (!rest.allStable()) {
      return "it does not come to a steady rest";
    }
    return switch (rest.worst().orElseThrow().orientation()) {
      case UPSIDE_DOWN -> "it rolls over and ends upside down";
      case ON_ITS_SIDE -> "it rolls over and lies on its side";
      case STERN_UP -> "it stands on its bow";
      case BOW_UP -> "it stands on its stern";
      case UPRIGHT -> "";
    };
  }
}
