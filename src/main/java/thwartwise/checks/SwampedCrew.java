package thwartwise.checks;

import thwartwise.boat.BoatModel;
import thwartwise.boat.CrewWhenSwamped;
import thwartwise.rules.Canoe;
import thwartwise.rules.RuleSet;

/** Whether the crew of a swamped boat sits in it or holds on to it from the water. */
public final class SwampedCrew {
  private SwampedCrew() {}

  /**
   * Whether they hold on: as the boat file says; without that, people hold on to a boat with the
   * form of a canoe.
   */
  public static boolean holdsOn(BoatModel model, RuleSet rules) {
    return model
        .boat()
        .whenSwamped()
        .map(CrewWhenSwamped.HOLD_ON::equals)
        .orElseGet(() -> Canoe.is(model.form(), rules));
  }
}
