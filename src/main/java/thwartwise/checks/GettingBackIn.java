package thwartwise.checks;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.afloat.Equilibria;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/** Swamped, can somebody get back in, and where: over the side, the stern or the bow? */
public record GettingBackIn(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    double adult = rules.value("design-person");
    LoadedBoat empty = boat.empty(Act.OTHERS_IN_THE_WATER);
    return Stream.of(
            reading(
                CheckId.GETTING_BACK_IN_OVER_THE_SIDE,
                PeopleMoves.climbingInOverTheSide(empty, adult)),
            reading(
                CheckId.GETTING_BACK_IN_OVER_THE_STERN,
                PeopleMoves.climbingInOverTheStern(empty, adult)),
            reading(
                CheckId.GETTING_BACK_IN_OVER_THE_BOW,
                PeopleMoves.climbingInOverTheBow(empty, adult)))
        .toList();
  }

  private CheckReading reading(CheckId check, List<LoadedBoat> ways) {
    Equilibria poses = Equilibria.of(ways.stream().map(w -> w.swampedRest(List.of())).toList());
    return SwampedLevel.outOfUpright(
        rules,
        CheckQuestion.of(check, Measure.OUT_OF_UPRIGHT),
        "swamped-side-heel",
        ways.get(0),
        poses);
  }
}
