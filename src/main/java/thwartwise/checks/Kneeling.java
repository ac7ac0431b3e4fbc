package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Body;
import thwartwise.rules.RuleSet;

/** How much steadier is it with everyone kneeling on the floor? */
public record Kneeling(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    if (trial.people().isEmpty()) {
      return List.of();
    }
    double share = rules.value("offset-share");
    List<Trial> ways = new ArrayList<>();
    for (double side : List.of(1.0, -1.0)) {
      List<Body> moved =
          Moves.kneeling(trial).stream().map(b -> b.at(side * share * b.reach())).toList();
      String how = "everyone kneeling, three fifths of the way" + Moves.sideWord(side);
      ways.add(trial.after(Disturbance.moved(how, moved)));
    }
    Heeled heeled = new Heeled(rules);
    List<Trial> seated = Moves.everyone(trial, share, "");
    List<String> figures =
        heeled.readings("", seated).stream()
            .map(r -> r.value().isPresent() ? "seated " + r.figure() : "seated no steady rest")
            .toList();
    List<Reading> kneeling = heeled.readings("kneeling, three fifths to one side", ways);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < kneeling.size(); i++) {
      String beside = figures.get(i);
      readings.add(kneeling.get(i).noted(n -> n.isBlank() ? beside : n + "; " + beside));
    }
    return readings;
  }
}
