package thwartwise.checks;

import java.util.List;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.loadcase.UsualPosture;
import thwartwise.rules.RuleSet;

/** May the crew of a canoe sit on its seats? Its limits assume that they kneel. */
public record SittingUp(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    if (!UsualPosture.kneels(rules, boat)) {
      return List.of();
    }
    return new HeelReadings(rules)
        .readings(
            CheckId.SITTING_UP,
            PeopleMoves.everyone(
                boat, rules.value("offset-share"), Act.EVERYONE_ON_THE_SEATS_PART_OF_THE_WAY));
  }
}
