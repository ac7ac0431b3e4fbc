package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/** How much does the boat gain when everyone kneels on the floor? */
public record Kneeling(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    double share = rules.value("offset-share");
    List<LoadedBoat> ways = PeopleMoves.kneeling(boat, share);
    HeelReadings heeled = new HeelReadings(rules);
    List<LoadedBoat> seated = PeopleMoves.everyone(boat, share, Act.EVERYONE_PART_OF_THE_WAY);
    List<Margin> figures =
        heeled.readings(CheckId.KNEELING, seated).stream().map(CheckReading::margin).toList();
    List<CheckReading> kneeling = heeled.readings(CheckId.KNEELING, ways);
    List<CheckReading> readings = new ArrayList<>();
    for (int i = 0; i < kneeling.size(); i++) {
      Margin beside = figures.get(i);
      readings.add(kneeling.get(i).noted(n -> new Note.NextToSeated(n, beside)));
    }
    return readings;
  }
}
