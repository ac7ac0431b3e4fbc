package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The swing of a boat whose load moves in a given time: roll integrated in small steps, with the
 * righting arm changing evenly from that before the move to that after it. Drag takes no energy.
 * Heel counts toward the side of the curves.
 *
 * @param heel where it first turns back after the move, or further on the way, rad; empty when it
 *     floods first
 * @param flooding heel at which the first edge reaches the water once all has moved, rad
 */
public record TimedDynamicHeel(OptionalDouble heel, OptionalDouble flooding) {
  private static final double STEP = 0.001;
  private static final double LONGEST = 30;

  /**
   * @param from heel at the start, rad
   * @param seconds duration of the move
   * @param radius of gyration in roll, m
   */
  public static TimedDynamicHeel of(
      RightingCurve before, RightingCurve after, double from, double seconds, double radius) {
    OptionalDouble flooding = after.floodingHeel();
    double floods = flooding.orElse(after.last().heel());
    double stiffness = Gravity.STANDARD / (radius * radius);
    Arms old = new Arms(before);
    Arms now = new Arms(after);
    double heel = from;
    double speed = 0;
    double most = from;
    for (double time = 0; time < LONGEST; time += STEP) {
      double moved = Math.min(1, time / seconds);
      double arm = (1 - moved) * old.at(heel) + moved * now.at(heel);
      double faster = speed - stiffness * arm * STEP;
      if (time > seconds && speed > 0 && faster <= 0) {
        return new TimedDynamicHeel(OptionalDouble.of(most), flooding);
      }
      speed = faster;
      heel += speed * STEP;
      most = Math.max(most, heel);
      if (heel >= floods) {
        return new TimedDynamicHeel(OptionalDouble.empty(), flooding);
      }
    }
    return new TimedDynamicHeel(OptionalDouble.of(most), flooding);
  }

  /**
   * Righting arms along the heels of a curve, with straight lines between two and beyond the ends.
   */
  private static final class Arms {
    private final double[] heels;
    private final double[] arms;
    private int above = 1;

    Arms(RightingCurve curve) {
      List<RightingCurve.Point> points = new ArrayList<>(curve.points());
      curve
          .flooding()
          .filter(p -> p.heel() > points.get(points.size() - 1).heel())
          .ifPresent(points::add);
      heels = points.stream().mapToDouble(RightingCurve.Point::heel).toArray();
      arms = points.stream().mapToDouble(RightingCurve.Point::arm).toArray();
    }

    double at(double heel) {
      if (heels.length < 2) {
        return arms[0];
      }
      while (above < heels.length - 1 && heels[above] < heel) {
        above++;
      }
      while (above > 1 && heels[above - 1] > heel) {
        above--;
      }
      double share = (heel - heels[above - 1]) / (heels[above] - heels[above - 1]);
      return arms[above - 1] + share * (arms[above] - arms[above - 1]);
    }
  }
}
