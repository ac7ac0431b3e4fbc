package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.loadcase.UsualPosture;
import thwartwise.rules.RuleSet;

/** May everyone, or any one person, sit hard against one side? */
public record HardAgainstOneSide(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat seated) {
    LoadedBoat boat = UsualPosture.of(rules, seated);
    HeelReadings heeled = new HeelReadings(rules);
    List<CheckReading> readings = new ArrayList<>();
    if (boat.people().size() > 1) {
      readings.addAll(
          heeled.readings(
              CheckId.EVERYONE_HARD_TO_ONE_SIDE,
              PeopleMoves.everyone(boat, 1, Act.EVERYONE_HARD_TO_THE_SIDE)));
    }
    readings.addAll(heeled.readings(CheckId.ONE_PERSON_HARD_TO_ONE_SIDE, PeopleMoves.one(boat)));
    return readings;
  }
}
