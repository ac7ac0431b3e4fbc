package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Gravity;
import thwartwise.boat.Loading;
import thwartwise.hull.HullForm;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * Does the swamped boat stay upright when everyone is in the water and holds the rail on one side?
 */
public record HoldingOnToOneSide(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    if (boat.people().isEmpty()) {
      return List.of();
    }
    List<LoadedBoat> ways = Stream.of(1.0, -1.0).flatMap(s -> holding(boat, s).stream()).toList();
    Equilibria poses = Equilibria.of(ways.stream().map(w -> w.swampedRest(List.of())).toList());
    return List.of(
        SwampedLevel.outOfUpright(
            rules,
            CheckQuestion.of(CheckId.HOLDING_ON_TO_ONE_SIDE, Measure.OUT_OF_UPRIGHT),
            "swamped-side-heel",
            ways.get(0),
            poses));
  }

  private List<LoadedBoat> holding(LoadedBoat boat, double side) {
    HullForm form = boat.model().form();
    double each = rules.value("hanging") / Gravity.STANDARD;
    List<Loading.Weight> hands = new ArrayList<>();
    boat.people().forEach(b -> hands.add(new Loading.Weight(each, form.railAt(b.x(), side > 0))));
    return boat.toSide(
        Disturbance.weighed(LoadCaseStep.of(Act.HOLDING_ONE_SIDE), List.of(), hands), side);
  }
}
