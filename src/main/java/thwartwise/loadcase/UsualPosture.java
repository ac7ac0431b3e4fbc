package thwartwise.loadcase;

import thwartwise.boat.Body;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.rules.Canoe;
import thwartwise.rules.RuleSet;

/**
 * The usual posture of the crew: kneeling on the floor in a hull with the form of a canoe (common
 * practice, no source), as the boat file says in every other boat.
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

  /** Whether the posture differs from that of the boat file. */
  public static boolean kneels(RuleSet rules, LoadedBoat boat) {
    return Canoe.is(boat.model().form(), rules)
        && boat.people().stream().anyMatch(b -> !kneeling(b).equals(b));
  }

  private static Body kneeling(Body body) {
    return body.keepsUpright() ? body.kneeling() : body;
  }
}
