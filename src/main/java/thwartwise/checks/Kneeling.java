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
    return new Heeled(rules).readings("kneeling, three fifths to one side", ways);
  }
}
