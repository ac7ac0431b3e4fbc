package thwartwise.checks;

import java.util.List;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.loadcase.UsualPosture;
import thwartwise.rules.RuleSet;

/** Does the boat stay up with everyone three fifths of the way to one side? */
public record ThreeFifthsToOneSide(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.LIMITS_CREW;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    List<LoadedBoat> ways =
        PeopleMoves.everyone(
            UsualPosture.of(rules, boat),
            rules.value("offset-share"),
            Act.EVERYONE_PART_OF_THE_WAY);
    return new HeelReadings(rules).readings(CheckId.THREE_FIFTHS_TO_ONE_SIDE, ways);
  }
}
