package thwartwise.checks;

import java.util.List;

/**
 * One question put to the boat. A check takes its readings from any trial; how they become a
 * finding is the same for all (see {@link Findings}).
 */
public interface Check {
  Role role();

  /** Whether a check that limits crew is about the swamped boat, and not about staying up. */
  default boolean aboutSwamped() {
    return false;
  }

  /** Whether it is answered from volumes alone, without looking for a rest: soonest told. */
  default boolean byVolumesAlone() {
    return false;
  }

  /** The same readings in the same order for every trial of a craft. */
  List<Reading> readings(Trial trial);
}
