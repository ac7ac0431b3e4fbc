package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/** May a swimmer climb in over the side or the stern, with the whole weight on the rail? */
public record ClimbingIn(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    double adult = rules.value("design-person");
    HeelReadings heeled = new HeelReadings(rules);
    List<CheckReading> readings = new ArrayList<>();
    readings.addAll(
        heeled.readings(
            CheckId.CLIMBING_IN_OVER_THE_SIDE, PeopleMoves.climbingInOverTheSide(boat, adult)));
    readings.addAll(
        heeled.readings(
            CheckId.CLIMBING_IN_OVER_THE_STERN, PeopleMoves.climbingInOverTheStern(boat, adult)));
    return readings;
  }
}
