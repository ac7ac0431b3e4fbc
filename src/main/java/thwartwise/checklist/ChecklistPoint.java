package thwartwise.checklist;

import thwartwise.boat.Boat;

/**
 * One thing to look at, by hand and eye.
 *
 * @param look what must be so, in words
 * @param why what goes wrong otherwise
 * @param concerns which boats it is asked of
 */
public record ChecklistPoint(String look, String why, Concern concerns) {

  boolean isAskedOf(Boat boat) {
    return concerns.isOf(boat);
  }

  /** What must be so on this boat, with the names of the things meant. */
  public String of(Boat boat) {
    String names = String.join(", ", concerns.names(boat));
    return names.isEmpty() ? look : look + " (" + names + ")";
  }
}
