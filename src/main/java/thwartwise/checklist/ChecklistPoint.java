package thwartwise.checklist;

import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.PointAnswer.PointGravity;

/**
 * One thing to look at, by hand and eye.
 *
 * @param id the same in every edition of the list; a point with the same id in another list
 *     replaces it
 * @param look the requirement, in words
 * @param how how to look or test with things of the household; may be blank
 * @param why what goes wrong if the requirement is not met
 * @param concerns the boats to which the point applies
 * @param gravity how grave a fault is
 * @param fact what a fault means for the boat
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

  /** A point without a method and without consequences for the figures. */
  public ChecklistPoint(String look, String why, Concern concerns) {
    this(look, look, "", why, concerns, PointGravity.ADVICE, Optional.empty(), 0);
  }

  boolean isAskedOf(Boat boat) {
    return concerns.isOf(boat);
  }

  /** The requirement on this boat, with the names of its things. */
  public String of(Boat boat) {
    String names = String.join(", ", concerns.names(boat));
    return names.isEmpty() ? look : look + " (" + names + ")";
  }
}
