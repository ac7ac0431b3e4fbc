package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.afloat.Force;
import thwartwise.afloat.Pose;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.loadcase.Wind;
import thwartwise.rules.RuleSet;

/** How far does a steady wind from the side lay the boat over? */
public record WindOnTheBeam(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<Reading> readings(LoadedBoat trial) {
    List<LoadedBoat> ways =
        trial.atRest().worst().map(pose -> bothSides(trial, pose)).orElse(List.of(trial));
    return new HeelReadings(rules, rules.value("wind-heel-share"))
        .readings(CheckId.WIND_ON_THE_BEAM, ways);
  }

  private List<LoadedBoat> bothSides(LoadedBoat trial, Pose pose) {
    Wind wind = Wind.of(rules);
    List<LoadedBoat> ways = new ArrayList<>();
    for (double toPort : List.of(1.0, -1.0)) {
      Vector3 from = pose.plane().athwart().times(-toPort);
      double push = wind.push(trial, pose, from);
      Vector3 centre = wind.centre(trial, pose, from);
      LoadCaseStep blown =
          new LoadCaseStep.WindPush(
              rules.value("wind"),
              push,
              Lever.of(trial, centre, from),
              Optional.of(PeopleMoves.side(toPort)),
              false);
      List<Force> forces = List.of(new Force(centre, 0, toPort * push));
      ways.addAll(trial.toSide(Disturbance.pulled(blown, trial.people(), forces), toPort));
    }
    return ways;
  }
}
