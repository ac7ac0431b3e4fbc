package thwartwise.checks;

import java.util.List;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.Canoe;
import thwartwise.rules.RuleSet;

/**
 * With everyone stiff, as somebody asleep or frightened is, and a little off the middle, does the
 * boat come to rest within the limits of everyone to one side? It limits the crew of every boat but
 * a canoe, which any stiff person tips: there it stands among what nobody does.
 *
 * @param ofCanoes whether canoes are asked, of which it limits nothing
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
