package thwartwise.loadcase;

import thwartwise.boat.Body;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.rules.Canoe;
import thwartwise.rules.RuleSet;

/**
 * How people are aboard when nothing is done: kneeling on the floor in a canoe by its form (common
 * practice, no source), as the boat file has them everywhere else.
 */
public final class UsualPosture {
  private UsualPosture() {}

  public static LoadedBoat of(RuleSet rules, LoadedBoat boat) {
    if (!kneels(rules, boat)) {
      return boat;
    }
    return boat.after(
        Disturbance.moved(
            LoadCaseStep.of(Act.EVERYONE_KNEELING),
            boat.people().stream().map(UsualPosture::kneeling).toList()));
  }

  /** Whether they are otherwise than the boat file has them. */
  public static boolean kneels(RuleSet rules, LoadedBoat boat) {
    return Canoe.is(boat.model().form(), rules)
        && boat.people().stream().anyMatch(b -> !kneeling(b).equals(b));
  }

  private static Body kneeling(Body body) {
    return body.keepsUpright() ? body.kneeling() : body;
  }
}
