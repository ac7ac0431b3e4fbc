package thwartwise.checks;

import java.util.List;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/** May one person lean out over the rail while the others sit? */
public record LeaningOut(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    return new HeelReadings(rules).readings(CheckId.LEANING_OUT, PeopleMoves.leaningOut(boat));
  }
}
