package thwartwise.inspection;

import java.util.List;
import thwartwise.boat.Person;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;

/**
 * A boat whose crews are judged by the spread of its measurements, without advice. A seating that
 * is not sure enough for a record is not allowed to named people either.
 */
public interface JudgedBoat {

  /**
   * The answer of an inspection; of the seatings for lighter people only the one in which extra
   * weight is carried.
   */
  Report report();

  /** The same boat with these people aboard instead of those of its file. */
  JudgedBoat withAboard(List<Person> people);

  /** Which of these people may go, and their seats. */
  CrewAnswer seats(List<NamedPerson> members);
}
