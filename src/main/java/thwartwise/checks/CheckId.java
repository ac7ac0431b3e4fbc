package thwartwise.checks;

/**
 * The checks. Records store these names, so no name is ever given another meaning.
 *
 * <p>Among acts the order is the one in which a page lists them.
 */
public enum CheckId {
  FREEBOARD_AT_REST,
  THREE_FIFTHS_TO_ONE_SIDE,
  SWAMPED_LEVEL,
  SWAMPED_LIFT(SWAMPED_LEVEL),
  ONE_CHAMBER_LOST(SWAMPED_LEVEL),
  SWAMPED_MARGIN(SWAMPED_LEVEL),
  ANCHORING_BY_THE_STERN,
  CLIMBING_IN_OVER_THE_SIDE,
  CLIMBING_IN_OVER_THE_STERN,
  EVERYONE_HARD_TO_ONE_SIDE,
  EVERYONE_SUDDENLY_TO_ONE_SIDE,
  CHAMBER_HOLED,
  LEANING_OUT,
  HATCH_LEFT_OPEN,
  ONE_PERSON_HARD_TO_ONE_SIDE,
  ONE_PERSON_STANDING,
  ONE_PERSON_SUDDENLY_TO_ONE_SIDE,
  FULL_POWER,
  SECOND_WAY_HOME,
  ANCHOR_LINE,
  ROAD_LOAD,
  SITTING_IN_IT_SWAMPED,
  SITTING_UP,
  STIFF_OFF_THE_MIDDLE,
  KNEELING,
  ONE_PERSON_TO_ONE_SIDE_IN_A_STEP,
  EVERYONE_TO_ONE_SIDE_IN_A_STEP,
  LOW_SIDE,
  ANCHORING_BY_THE_BOW,
  GREATEST_PULL,
  WIND_ON_THE_BEAM,
  MOTOR_HARD_OVER,
  LOOSE_WATER,
  RAIN_AT_THE_MOORING,
  DRAIN_OPEN,
  LEAK_UNDER_WAY,
  LEAK_AT_THE_MOORING,
  ROWING,
  /** Whether whoever steers reaches the motor from the place that was stated. */
  STEERING,
  CHAMBER_LOST(SWAMPED_LEVEL),
  TWO_LARGEST_CHAMBERS_LOST(SWAMPED_LEVEL),
  HOLDING_ON_TO_ONE_SIDE(SWAMPED_LEVEL),
  BAILING(SWAMPED_LEVEL),
  GETTING_BACK_IN_OVER_THE_SIDE(SWAMPED_LEVEL),
  GETTING_BACK_IN_OVER_THE_STERN(SWAMPED_LEVEL),
  GETTING_BACK_IN_OVER_THE_BOW(SWAMPED_LEVEL),
  TURNING_BACK,
  LITRES_POURED,
  /** Whether a measurement is plausible; the thing is what was measured. */
  PLAUSIBILITY,
  /** A fault at a point of a checklist: the requirement, and its thing. */
  LOOKED_AT,
  /** Whether the battery's terminals are covered. */
  BATTERY_COVERED,
  /** Whether the battery stays in place when the boat goes over. */
  BATTERY_HELD,
  /** Whether there is a fuse on either side of the panel's controller. */
  PANEL_FUSED,
  /** Whether wire and fuse of a circuit fit what it draws; the thing is the circuit. */
  CIRCUIT_GUARDED,
  /** A question of an older record that is no longer asked; the thing is its old name. */
  NO_LONGER_ASKED;

  private final CheckId subject;

  CheckId() {
    this.subject = this;
  }

  CheckId(CheckId subject) {
    this.subject = subject;
  }

  /** Whether it has a figure; the other checks only say whether a requirement is met. */
  public boolean hasFigure() {
    return switch (this) {
      case LOOKED_AT, BATTERY_COVERED, BATTERY_HELD, PANEL_FUSED, CIRCUIT_GUARDED -> false;
      default -> true;
    };
  }

  /** The check that stands for all checks of one event, such as swamping. */
  CheckId subject() {
    return subject;
  }
}
