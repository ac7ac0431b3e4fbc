package thwartwise.proof;

import thwartwise.afloat.Pose;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Side;
import thwartwise.hull.Station;

/** One reading of a boat afloat. */
public sealed interface ProofReading {

  /** The value as read. */
  double value();

  /** The standard deviation of reading it. */
  double spread();

  /** The predicted value for a boat in a pose. */
  double predicted(BoatModel model, Pose pose);

  /**
   * The height of the rail above the water at a station, perpendicular to it, m.
   *
   * @param station by its number from aft, 0 the first
   */
  record FreeboardReading(int station, Side side, double value, double spread)
      implements ProofReading {
    public FreeboardReading {
      readable(value, spread);
    }

    @Override
    public double predicted(BoatModel model, Pose pose) {
      Station there = model.boat().hull().stations().get(station);
      return pose.above(side == Side.PORT ? there.portRail() : there.starboardRail());
    }
  }

  /** Heel, starboard down positive, rad. */
  record HeelReading(double value, double spread) implements ProofReading {
    public HeelReading {
      readable(value, spread);
    }

    /**
     * The heel by a pendulum.
     *
     * @param length from where it hangs to where it is read, m
     * @param deflection of its end toward starboard, m
     * @param spread of reading that, m
     */
    public static HeelReading ofPendulum(double length, double deflection, double spread) {
      double heel = Math.atan2(deflection, length);
      double cosine = Math.cos(heel);
      return new HeelReading(heel, spread / length * cosine * cosine);
    }

    /**
     * The heel by the heights of both rails above the water.
     *
     * @param port height of the port rail, m
     * @param breadth from rail to rail, m
     * @param spread of either height, m
     */
    public static HeelReading ofRails(
        double port, double starboard, double breadth, double spread) {
      double sine = (port - starboard) / breadth;
      return new HeelReading(
          Math.asin(sine), Math.sqrt(2) * spread / breadth / Math.sqrt(1 - sine * sine));
    }

    @Override
    public double predicted(BoatModel model, Pose pose) {
      return pose.heel();
    }
  }

  private static void readable(double value, double spread) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("A reading must be finite: " + value + ".");
    }
    if (!(spread > 0 && spread < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The spread of a reading must be above 0: " + spread + ".");
    }
  }
}
