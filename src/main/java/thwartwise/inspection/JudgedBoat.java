package thwartwise.inspection;

import java.util.List;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;

/**
 * A boat whose crews are judged by the spread of its measurements, without advice. A seating that
 * is not sure enough for a record is not allowed to named people either.
 */
public interface JudgedBoat {

  /** The answer of an inspection. */
  Report report();

  /** Which of these people may go, and their seats. */
  CrewAnswer seats(List<NamedPerson> members);
}
