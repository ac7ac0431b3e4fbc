package thwartwise.inspection;

import java.time.LocalDate;
import thwartwise.boat.Boat;
import thwartwise.rules.RuleSet;

/** One whole run over a boat. */
public final class Inspection {
  private Inspection() {}

  /**
   * Inspects the boat as it stands on the given day.
   *
   * @throws thwartwise.boat.UnusableBoat when the measurements contradict each other
   */
  public static Report of(Boat boat, RuleSet rules, LocalDate today) {
    throw new UnsupportedOperationException("not built yet: " + boat + rules + today);
  }
}
