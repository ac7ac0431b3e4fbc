package thwartwise.checks;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.afloat.Equilibria;
import thwartwise.rules.RuleSet;

/** Swamped, can somebody get back in, and where: over the side, the stern or the bow? */
public record GettingBackIn(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    double adult = rules.value("design-person");
    Trial beside = trial.empty("the others in the water");
    return Stream.of(
            reading("side", Moves.climbingInOverTheSide(beside, adult)),
            reading("stern", Moves.climbingInOverTheStern(beside, adult)),
            reading("bow", Moves.climbingInOverTheBow(beside, adult)))
        .toList();
  }

  private Reading reading(String where, List<Trial> ways) {
    Equilibria poses = Equilibria.of(ways.stream().map(w -> w.swampedRest(List.of())).toList());
    return SwampedLevel.outOfUpright(
        rules,
        "swamped, getting back in over the " + where,
        "swamped-side-heel",
        ways.get(0),
        poses);
  }
}
