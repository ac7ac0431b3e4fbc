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
import thwartwise.picture.PictureFacts.CrewAboard;
import thwartwise.picture.PictureFacts.SwampedRest;

/**
 * The boat as it is drawn: with the recommended crew in the seating that comes nearest to a limit,
 * or with nobody where nobody is recommended; as measured and without allowance, as in the report.
 *
 * @param empty the equilibrium with its kit and nobody aboard
 * @param loaded the equilibrium with the crew
 * @param swamped the equilibrium with the crew, open to the sea
 */
record Scene(
    BoatModel model,
    LoadedBoat loadedBoat,
    Equilibria empty,
    Equilibria loaded,
    Equilibria swamped) {

  static Scene of(BoatModel model, Report report) {
    return of(model, CrewAtLimit.of(model, report));
  }

  /** With these people aboard. */
  static Scene of(BoatModel model, List<Body> crew) {
    LoadedBoat loadedBoat = LoadedBoat.of(model, crew);
    Equilibria loaded = loadedBoat.atRest();
    return new Scene(
        model,
        loadedBoat,
        crew.isEmpty() ? loaded : LoadedBoat.of(model, List.of()).atRest(),
        loaded,
        Equilibrium.from(loadedBoat.swamped(List.of())));
  }

  /** The units of the boat's papers. */
  UnitFormat units() {
    return new UnitFormat(model.boat().units());
  }

  List<Body> crew() {
    return loadedBoat.people();
  }

  /** The same with the people elsewhere. */
  LoadedBoat with(List<Body> people) {
    return LoadedBoat.of(model, people);
  }

  /** The pose that counts, if the boat is upright in it. */
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
