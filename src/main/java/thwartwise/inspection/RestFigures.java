package thwartwise.inspection;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.IntStream;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.Pose;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadedBoat;

/**
 * The equilibrium of a boat, dry, with the kit and the people its file names, for comparing two
 * ways of loading it.
 *
 * @param trim positive bow down, rad
 * @param heel positive starboard down, rad
 * @param freeboard the least, m
 * @param lowest the edge of that freeboard
 * @param draft from the water's surface down to the deepest point of the hull, m
 * @param pose the boat's axes relative to the water
 */
public record RestFigures(
    double trim, double heel, double freeboard, String lowest, double draft, Pose pose) {

  /** Empty without an equilibrium. */
  public static Optional<RestFigures> of(Boat boat, LocalDate today) {
    BoatModel model = BoatModel.of(boat, today);
    LoadedBoat loaded = LoadedBoat.of(model, model.aboard(), LoadCase.AS_MEASURED);
    return loaded.atRest().worst().map(pose -> of(model, pose));
  }

  private static RestFigures of(BoatModel model, Pose pose) {
    Freeboard least = Freeboard.least(model.edges(), pose.plane());
    return new RestFigures(
        pose.trim(),
        pose.heel(),
        least.height(),
        least.at(),
        draft(model.form().outside(), pose),
        pose);
  }

  private static double draft(Solid hull, Pose pose) {
    return IntStream.range(0, hull.triangleCount())
        .boxed()
        .flatMap(i -> hull.triangle(i).stream())
        .mapToDouble(point -> -pose.above(point))
        .max()
        .orElse(0);
  }

  /** The depth of a point of the boat under the water's surface, m. */
  double depthOf(Vector3 point) {
    return -pose.above(point);
  }
}
