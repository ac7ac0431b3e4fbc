package thwartwise.checks;

import thwartwise.boat.BoatModel;
import thwartwise.boat.CrewWhenSwamped;
import thwartwise.rules.Canoe;
import thwartwise.rules.RuleSet;

/** Where the crew of a swamped boat is: in it, or in the water with hands on it. */
public final class SwampedCrew {
  private SwampedCrew() {}

  /** As the boat file says; otherwise a canoe by its form is held on to. */
  public static boolean holdsOn(BoatModel model, RuleSet rules) {
    return model
        .boat()
        .whenSwamped()
        .map(CrewWhenSwamped.HOLD_ON::equals)
        .orElseGet(() -> Canoe.is(model.form(), rules));
  }
}
