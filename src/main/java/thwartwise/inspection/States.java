package thwartwise.inspection;

import java.util.List;
import java.util.Optional;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.Floating;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.Pose;
import thwartwise.afloat.RightingCurve;
import thwartwise.boat.Craft;
import thwartwise.checks.Trial;

/** Describes one loading afloat, heeled and swamped, as measured and without allowance. */
final class States {
  private States() {}

  static StateFigures of(Trial trial) {
    Equilibria rest = trial.atRest();
    Floating floating = trial.afloat();
    return new StateFigures(
        trial.condition(),
        rest.worst().map(p -> afloat(trial.craft(), floating, p, rest.allStable())),
        RightingCurve.towardWorseSide(floating, trial.craft().edges()).map(States::righting),
        swamped(trial),
        rest.noneBecause());
  }

  private static AfloatFigures afloat(
      Craft craft, Floating floating, Pose pose, boolean allStable) {
    Freeboard least = Freeboard.least(craft.edges(), pose.plane());
    return new AfloatFigures(
        floating.mass(),
        floating.centre(),
        figures(pose),
        pose.part().volume(),
        pose.part().centroid(),
        pose.part().area(),
        pose.metacentricHeight(),
        least.height(),
        least.at(),
        allStable);
  }

  private static RightingFigures righting(RightingCurve curve) {
    List<RightingFigures.Point> points =
        curve.points().stream()
            .map(p -> new RightingFigures.Point(p.heel(), p.arm(), curve.moment(p)))
            .toList();
    return new RightingFigures(
        curve.side().word(),
        points,
        curve.floodingHeel(),
        curve.floodingAt(),
        curve.moment(curve.greatest()),
        curve.greatest().heel());
  }

  private static SwampedFigures swamped(Trial trial) {
    Floating floating = trial.swamped(Optional.empty());
    Equilibria poses = Equilibrium.from(floating);
    return new SwampedFigures(
        floating.liftVolume() > floating.neededVolume(),
        poses.worst().map(States::figures),
        poses.reached().stream().map(States::figures).toList(),
        trial.spareBuoyancy(Optional.empty()));
  }

  private static PoseFigures figures(Pose pose) {
    return new PoseFigures(
        pose.word(), pose.waterAtOrigin(), pose.heel(), pose.trim(), pose.stable());
  }
}
