package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.afloat.EquilibriumUnderForces.Force;
import thwartwise.afloat.Pose;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.loadcase.Wind;
import thwartwise.rules.RuleSet;

/** How far does a steady wind from the side heel the boat? */
public record WindOnTheBeam(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    List<LoadedBoat> ways =
        boat.atRest().worst().map(pose -> bothSides(boat, pose)).orElse(List.of(boat));
    return new HeelReadings(rules, rules.value("wind-heel-share"))
        .readings(CheckId.WIND_ON_THE_BEAM, ways);
  }

  private List<LoadedBoat> bothSides(LoadedBoat boat, Pose pose) {
    Wind wind = Wind.of(rules);
    List<LoadedBoat> ways = new ArrayList<>();
    for (double toPort : List.of(1.0, -1.0)) {
      Vector3 from = pose.plane().athwart().times(-toPort);
      double push = wind.push(boat, pose, from);
      Vector3 centre = wind.centre(boat, pose, from);
      LoadCaseStep blown =
          new LoadCaseStep.WindPush(
              rules.value("wind"),
              push,
              Lever.of(boat, centre, from),
              Optional.of(PeopleMoves.side(toPort)),
              false);
      List<Force> forces = List.of(new Force(centre, 0, toPort * push));
      ways.addAll(boat.toSide(Disturbance.withForces(blown, boat.people(), forces), toPort));
    }
    return ways;
  }
}
