package thwartwise.loadcase;

import java.util.Optional;
import thwartwise.boat.Side;

/** One act on a boat and the people in it. Lengths in m, forces in N, angles in degrees. */
public sealed interface LoadCaseStep {

  /**
   * An act without a figure.
   *
   * @param who the name of the person or thing; blank for everybody or nobody
   * @param side to which it is done
   * @param kitSlid whether loose kit has slid to that side
   */
  record Done(Act act, String who, Optional<Side> side, boolean kitSlid) implements LoadCaseStep {
    @Override
    public LoadCaseStep withKitSlid() {
      return new Done(act, who, side, true);
    }

    @Override
    public LoadCaseStep to(Side other) {
      return new Done(act, who, Optional.of(other), kitSlid);
    }
  }

  /** Everyone moves a distance off the middle. */
  record OffTheMiddle(double distanceM, boolean stiff, Optional<Side> side, boolean kitSlid)
      implements LoadCaseStep {
    @Override
    public LoadCaseStep withKitSlid() {
      return new OffTheMiddle(distanceM, stiff, side, true);
    }

    @Override
    public LoadCaseStep to(Side other) {
      return new OffTheMiddle(distanceM, stiff, Optional.of(other), kitSlid);
    }
  }

  /** Somebody moves hard against a side in a number of seconds; a blank name is everyone. */
  record MovedInTime(String who, double seconds, Optional<Side> side, boolean kitSlid)
      implements LoadCaseStep {
    @Override
    public LoadCaseStep withKitSlid() {
      return new MovedInTime(who, seconds, side, true);
    }

    @Override
    public LoadCaseStep to(Side other) {
      return new MovedInTime(who, seconds, Optional.of(other), kitSlid);
    }
  }

  /**
   * A line pulls at a cleat.
   *
   * @param pullN the level part of it
   * @param leastN what is expected at the least
   * @param mostN what is expected at the most, snatch included
   * @param leverM height above the centre of the water's reaction on the hull; negative below it
   */
  record LinePull(
      String cleat, double pullN, double leastN, double mostN, double leverM, double downDegrees)
      implements LoadCaseStep {}

  /** A steady wind pushes from the side. */
  record WindPush(
      double speedMetresPerSecond,
      double pushN,
      double leverM,
      Optional<Side> side,
      boolean kitSlid)
      implements LoadCaseStep {
    @Override
    public LoadCaseStep withKitSlid() {
      return new WindPush(speedMetresPerSecond, pushN, leverM, side, true);
    }
  }

  /** The motor pushes, hard over. */
  record MotorPush(double pushN, double leverM, Optional<Side> side) implements LoadCaseStep {}

  /** Words, in an older record. */
  record Stated(String words) implements LoadCaseStep {}

  /** With loose kit slid to its side; unchanged for an act without a side. */
  default LoadCaseStep withKitSlid() {
    return this;
  }

  /** Toward a side; unchanged for an act without a side. */
  default LoadCaseStep to(Side side) {
    return this;
  }

  static LoadCaseStep of(Act act) {
    return of(act, "");
  }

  static LoadCaseStep of(Act act, String who) {
    return new Done(act, who, Optional.empty(), false);
  }

  /** What is done. */
  enum Act {
    EVERYONE_PART_OF_THE_WAY,
    EVERYONE_HARD_TO_THE_SIDE,
    EVERYONE_ON_THE_SEATS_PART_OF_THE_WAY,
    EVERYONE_KNEELING_PART_OF_THE_WAY,
    EVERYONE_STIFF_ON_THE_LOW_SIDE,
    EVERYONE_KNEELING,
    HALF_THE_WEIGHT_PART_OF_THE_WAY,
    HARD_TO_THE_SIDE,
    STANDING,
    LEANING_OUT,
    CLIMBING_IN_OVER_THE_SIDE,
    CLIMBING_IN_OVER_THE_STERN,
    CLIMBING_IN_OVER_THE_BOW,
    SUDDENLY_HARD_TO_THE_SIDE,
    HALF_FULL,
    FULL,
    LEFT_OPEN,
    LINE_OUT,
    LEFT_AT_THE_MOORING,
    HANDS_ON_IT,
    HOLDING_ONE_SIDE,
    EVERYONE_IN_THE_WATER,
    OTHERS_IN_THE_WATER,
    NOBODY_UNDER_IT,
    BACK_IN_TO_BAIL,
    OPEN,
    LEVEL_AS_LOADED
  }
}
