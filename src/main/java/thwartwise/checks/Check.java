package thwartwise.checks;

import java.util.List;
import thwartwise.loadcase.LoadedBoat;

/**
 * One question put to the boat. A check takes its readings from any loaded boat; how they become a
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

  /** The same readings in the same order for every loaded boat of a boat. */
  List<CheckReading> readings(LoadedBoat boat);

  /**
   * The readings, where what is not met in a rest found from a balance already known is asked once
   * more of the boat let go upright: none but that answer refuses anything.
   */
  default List<CheckReading> confirmedReadings(LoadedBoat boat) {
    List<CheckReading> readings = readings(boat);
    return !boat.beganNear() || readings.stream().allMatch(CheckReading::met)
        ? readings
        : readings(boat.fromUpright());
  }
}
