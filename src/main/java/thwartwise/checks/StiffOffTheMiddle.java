package thwartwise.checks;

import java.util.List;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.Canoe;
import thwartwise.rules.RuleSet;

/**
 * Does the boat come to rest within the limits for everyone to one side when everyone sits stiff,
 * as people do who are asleep or frightened, and a little off the middle? It limits the crew of
 * every boat except a canoe, which any stiff person tips: there it forbids an act.
 *
 * @param ofCanoes whether canoes are asked
 */
public record StiffOffTheMiddle(RuleSet rules, boolean ofCanoes) implements Check {
  @Override
  public Role role() {
    return ofCanoes ? Role.FORBIDS_AN_ACT : Role.LIMITS_CREW;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    if (boat.people().isEmpty() || Canoe.is(boat.model().form(), rules) != ofCanoes) {
      return List.of();
    }
    List<LoadedBoat> ways = PeopleMoves.offTheMiddle(boat.stiff(), rules.value("off-middle"), true);
    return new HeelReadings(rules).readings(CheckId.STIFF_OFF_THE_MIDDLE, ways);
  }
}
