package thwartwise.checks;

import java.util.List;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/** May one person stand while the others sit? */
public record OnePersonStanding(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    return new HeelReadings(rules)
        .readings(CheckId.ONE_PERSON_STANDING, PeopleMoves.standing(boat));
  }
}
