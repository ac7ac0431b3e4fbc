package thwartwise.picture;

import java.util.List;
import java.util.Optional;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.Pose;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.inspection.CrewAtLimit;
import thwartwise.inspection.Report;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.measure.UnitFormat;

/**
 * The boat as it is drawn: with the recommended crew in the seating that comes nearest to a limit,
 * or with nobody where nobody is recommended; as measured and without allowance, as the report
 * tells it.
 *
 * @param empty where it rests with its kit and nobody aboard
 * @param loaded where it rests with the crew
 * @param swamped where it rests with the crew, open to the sea
 */
record Scene(
    BoatModel craft, LoadedBoat trial, Equilibria empty, Equilibria loaded, Equilibria swamped) {

  static Scene of(BoatModel craft, Report report) {
    List<Body> crew = CrewAtLimit.of(craft, report);
    LoadedBoat trial = LoadedBoat.of(craft, crew);
    Equilibria loaded = trial.atRest();
    return new Scene(
        craft,
        trial,
        crew.isEmpty() ? loaded : LoadedBoat.of(craft, List.of()).atRest(),
        loaded,
        Equilibrium.from(trial.swamped(List.of())));
  }

  /** Those of the boat's papers. */
  UnitFormat units() {
    return new UnitFormat(craft.boat().units());
  }

  List<Body> crew() {
    return trial.people();
  }

  /** The same with the people elsewhere. */
  LoadedBoat with(List<Body> people) {
    return LoadedBoat.of(craft, people);
  }

  /** The pose that counts, if the boat lies in it as a boat should. */
  static Optional<Pose> upright(Equilibria rest) {
    return rest.worst().filter(Pose::isUpright);
  }

  CrewAboard aboard() {
    return new CrewAboard(crew().size(), crew().isEmpty() ? 0 : crew().get(0).mass());
  }

  SwampedRest swampedRest() {
    if (!swamped.exist()) {
      return swamped.assessed() ? SwampedRest.SINKS : SwampedRest.NOT_ASSESSED;
    }
    return upright(swamped).isPresent() ? SwampedRest.UPRIGHT : SwampedRest.NOT_UPRIGHT;
  }
}
