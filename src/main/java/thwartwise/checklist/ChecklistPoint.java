package thwartwise.checklist;

import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.PointAnswer.PointGravity;

/**
 * One thing to look at, by hand and eye.
 *
 * @param id the same in every edition of the list; a point of the same id in another list stands in
 *     its place
 * @param look what must be so, in words
 * @param how how to look or test with things of the household; may be blank
 * @param why what goes wrong otherwise
 * @param concerns which boats it is asked of
 * @param gravity how grave it is otherwise
 * @param fact what is then so of the boat
 * @param repeatAfterDays days after which it is asked again; zero for never
 */
public record ChecklistPoint(
    String id,
    String look,
    String how,
    String why,
    Concern concerns,
    PointGravity gravity,
    Optional<BoatFact> fact,
    int repeatAfterDays) {

  /** One that says nothing of how, and is advice alone. */
  public ChecklistPoint(String look, String why, Concern concerns) {
    this(look, look, "", why, concerns, PointGravity.ADVICE, Optional.empty(), 0);
  }

  boolean isAskedOf(Boat boat) {
    return concerns.isOf(boat);
  }

  /** What must be so on this boat, with the names of the things meant. */
  public String of(Boat boat) {
    String names = String.join(", ", concerns.names(boat));
    return names.isEmpty() ? look : look + " (" + names + ")";
  }
}
