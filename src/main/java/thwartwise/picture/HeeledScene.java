package thwartwise.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.Gravity;
import thwartwise.afloat.Pose;
import thwartwise.afloat.RightingCurve;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;

/**
 * The boat heeled toward its worse side, everyone leaning with it as in the righting curve: by
 * everyone hard against it where there is an equilibrium, otherwise so far that the first edge
 * reaches the water.
 *
 * @param curve with everyone in their places
 * @param moved the people hard against that side
 * @param rest the equilibrium with them there, dry; empty when there is none, or when nobody is
 *     aboard
 */
record HeeledScene(RightingCurve curve, List<Body> moved, Optional<Pose> rest) {

  /** Empty when the boat does not float upright. */
  static Optional<HeeledScene> of(Scene scene) {
    return RightingCurve.towardWorseSide(scene.loadedBoat().stiff().afloat(), scene.model().edges())
        .map(curve -> of(scene, curve));
  }

  private static HeeledScene of(Scene scene, RightingCurve curve) {
    List<Body> moved =
        scene.crew().stream().map(b -> b.stiff().hardToSide(-curve.side().sign())).toList();
    Optional<Pose> rest =
        moved.isEmpty()
            ? Optional.empty()
            : Scene.upright(scene.with(moved).atRest()).filter(pose -> isDry(scene.model(), pose));
    return new HeeledScene(curve, moved, rest);
  }

  private static boolean isDry(BoatModel model, Pose pose) {
    return Freeboard.least(model.edges(), pose.plane()).height() >= 0;
  }

  WaterPlane plane() {
    return rest.map(Pose::plane).orElse(curve.last().plane());
  }

  /**
   * Whether it is drawn where the first edge reaches the water, because there is no equilibrium
   * before.
   */
  boolean atFlooding() {
    return rest.isEmpty() && curve.flooding().isPresent();
  }

  /** The heel toward the side, rad. */
  double heel() {
    return curve.side().sign() * plane().heel();
  }

  FloodPoint lowestEdge(BoatModel model) {
    WaterPlane plane = plane();
    return model.edges().stream()
        .min(Comparator.comparingDouble(e -> plane.above(e.at())))
        .orElseThrow();
  }

  /** The moment of the people who moved, when it is at a heel, N·m. */
  double peoplesMoment(List<Body> seated, double heel) {
    double shift = 0;
    for (int i = 0; i < seated.size(); i++) {
      shift += seated.get(i).mass() * (seated.get(i).y() - moved.get(i).y());
    }
    return curve.side().sign() * shift * Gravity.STANDARD * Math.cos(heel);
  }
}
