package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import thwartwise.checks.Note;
import thwartwise.inspection.StateFigures.AfloatFigures;
import thwartwise.inspection.StateFigures.PoseFigures;
import thwartwise.inspection.StateFigures.RightingFigures;
import thwartwise.inspection.StateFigures.SwampedFigures;
import thwartwise.inspection.StateFigures.WaterFigures;
import thwartwise.loadcase.LoadedBoat;

/** Describes one loading afloat, heeled and swamped, as measured and without allowance. */
final class LoadCaseFigures {
  private static final double LEAST_WATER = 0.01;

  private LoadCaseFigures() {}

  static StateFigures of(LoadedBoat boat) {
    Equilibria rest = boat.atRest();
    FloatingBody floating = boat.afloat();
    return new StateFigures(
        boat.loadCase(),
        rest.worst().map(p -> afloat(boat.model(), floating, p, rest.allStable())),
        RightingCurve.towardWorseSide(boat.stiff().afloat(), boat.model().edges())
            .map(c -> righting(boat.model(), c)),
        swamped(boat),
        looseWater(boat),
        rest.exist() ? Note.NONE : Note.of(rest));
  }

  private static AfloatFigures afloat(
      BoatModel model, FloatingBody floating, Pose pose, boolean allStable) {
    Freeboard least = Freeboard.least(model.edges(), pose.plane());
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

  private static RightingFigures righting(BoatModel model, RightingCurve curve) {
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
        Optional.of(curve.end()),
        model.boat().openings().stream()
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
  private static List<WaterFigures> looseWater(LoadedBoat boat) {
    LooseWater water = boat.looseWater();
    double full = water.capacity(Bay.WHOLE);
    List<WaterFigures> table = new ArrayList<>();
    Equilibria dry = boat.atRest();
    for (double volume = LEAST_WATER; volume < full; volume *= 2) {
      Equilibria rest = Equilibrium.from(water.in(Bay.WHOLE, volume));
      if (rest.worst().isEmpty()) {
        return table;
      }
      Pose pose = rest.worst().get();
      double least = Freeboard.least(boat.model().edges(), pose.plane()).height();
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

  private static SwampedFigures swamped(LoadedBoat boat) {
    FloatingBody floating = boat.swamped(List.of());
    Equilibria poses = Equilibrium.from(floating);
    return new SwampedFigures(
        floating.liftVolume() > floating.neededVolume(),
        poses.worst().map(LoadCaseFigures::figures),
        poses.reached().stream().map(LoadCaseFigures::figures).toList(),
        boat.spareBuoyancy(List.of()));
  }

  private static PoseFigures figures(Pose pose) {
    return new PoseFigures(
        pose.orientation(), pose.waterAtOrigin(), pose.heel(), pose.trim(), pose.stable());
  }
}
