package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.FloatingBody;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.LooseWater;
import thwartwise.afloat.Pose;
import thwartwise.afloat.RightingCurve;
import thwartwise.afloat.WaterLimits;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Opening;
import thwartwise.loadcase.LoadedBoat;

/** Describes one loading afloat, heeled and swamped, as measured and without allowance. */
final class LoadCaseFigures {
  private static final double LEAST_WATER = 0.01;

  private LoadCaseFigures() {}

  static StateFigures of(LoadedBoat trial) {
    Equilibria rest = trial.atRest();
    FloatingBody floating = trial.afloat();
    return new StateFigures(
        trial.loadCase(),
        rest.worst().map(p -> afloat(trial.craft(), floating, p, rest.allStable())),
        RightingCurve.towardWorseSide(trial.stiff().afloat(), trial.craft().edges())
            .map(c -> righting(trial.craft(), c)),
        swamped(trial),
        looseWater(trial),
        rest.noneBecause());
  }

  private static AfloatFigures afloat(
      BoatModel craft, FloatingBody floating, Pose pose, boolean allStable) {
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

  private static RightingFigures righting(BoatModel craft, RightingCurve curve) {
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
        curve.greatest().heel(),
        curve.energy(),
        curve.endsBecause(),
        craft.boat().openings().stream()
            .filter(o -> !o.floodsTheBoat())
            .map(o -> reached(curve, o))
            .toList());
  }

  /** The first of an opening's two ends to reach the water. */
  private static RightingFigures.Reached reached(RightingCurve curve, Opening opening) {
    OptionalDouble heel =
        opening.ends().stream().map(curve::reaches).flatMapToDouble(OptionalDouble::stream).min();
    return new RightingFigures.Reached(opening.name(), heel, opening.into().orElse(""));
  }

  /** Doubling from ten litres as long as every edge is out of the water. */
  private static List<WaterFigures> looseWater(LoadedBoat trial) {
    LooseWater water = trial.looseWater();
    double full = water.capacity(Bay.WHOLE);
    List<WaterFigures> table = new ArrayList<>();
    Equilibria dry = trial.atRest();
    for (double volume = LEAST_WATER; volume < full; volume *= 2) {
      Equilibria rest = Equilibrium.from(water.in(Bay.WHOLE, volume));
      if (rest.worst().isEmpty()) {
        return table;
      }
      Pose pose = rest.worst().get();
      double least = Freeboard.least(trial.craft().edges(), pose.plane()).height();
      if (!(least > 0)) {
        return table;
      }
      table.add(
          new WaterFigures(
              volume,
              least,
              pose.metacentricHeight(),
              pose.heel(),
              WaterLimits.comesBack(rest, dry)));
    }
    return table;
  }

  private static SwampedFigures swamped(LoadedBoat trial) {
    FloatingBody floating = trial.swamped(List.of());
    Equilibria poses = Equilibrium.from(floating);
    return new SwampedFigures(
        floating.liftVolume() > floating.neededVolume(),
        poses.worst().map(LoadCaseFigures::figures),
        poses.reached().stream().map(LoadCaseFigures::figures).toList(),
        trial.spareBuoyancy(List.of()));
  }

  private static PoseFigures figures(Pose pose) {
    return new PoseFigures(
        pose.orientation(), pose.waterAtOrigin(), pose.heel(), pose.trim(), pose.stable());
  }
}
