package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/** How much steadier is it with everyone kneeling on the floor? */
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
    List<String> figures =
        heeled.readings(CheckId.KNEELING, seated).stream()
            .map(
                r ->
                    r.value().isPresent()
                        ? "seated " + FigureWords.of(r.margin(), boat.units())
                        : "seated no steady rest")
            .toList();
    List<CheckReading> kneeling = heeled.readings(CheckId.KNEELING, ways);
    List<CheckReading> readings = new ArrayList<>();
    for (int i = 0; i < kneeling.size(); i++) {
      String seatedFigure = figures.get(i);
      readings.add(
          kneeling.get(i).noted(n -> n.isBlank() ? seatedFigure : n + "; " + seatedFigure));
    }
    return readings;
  }
}
