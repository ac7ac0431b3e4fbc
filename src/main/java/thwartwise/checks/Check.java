package thwartwise.checks;

import java.util.List;
import thwartwise.loadcase.LoadedBoat;

/**
 * One question to the boat. A check takes its readings from any loaded boat; the way they become a
 * finding is the same for all (see {@link Findings}).
 */
public interface Check {
  Role role();

  /** Whether a check that limits crew is about the swamped boat. */
  default boolean aboutSwamped() {
    return false;
  }

  /**
   * Whether volumes alone answer it, without a search for equilibrium, so that it is the fastest to
   * ask.
   */
  default boolean byVolumesAlone() {
    return false;
  }

  /** The readings; the same questions in the same order for every loading of a boat. */
  List<CheckReading> readings(LoadedBoat boat);

  /**
   * The readings, where a limit that is not met at an equilibrium found from a cached balance is
   * checked again from upright: only that second answer may refuse a crew. A boat with a
   * measurement moved is not ({@link LoadedBoat#mustBeConfirmed}).
   */
  default List<CheckReading> confirmedReadings(LoadedBoat boat) {
    List<CheckReading> readings = readings(boat);
    return !boat.mustBeConfirmed() || readings.stream().allMatch(CheckReading::met)
        ? readings
        : readings(boat.fromUpright());
  }
}
