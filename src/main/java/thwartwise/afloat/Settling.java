package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * A boat held at a direction and let sink until weight and buoyancy balance: energy, the moments
 * that turn it, and its stiffness.
 *
 * <p>Potential energy over ρg is the first moment of all weights, written as volumes of water,
 * above the surface, less that of the immersed volume. Its slopes are the volume times the level
 * distances of G from B, its curvature the second moments of the waterplane, less those of every
 * loose surface inside, less the energy itself. Loose water lies where its own energy is least at
 * each direction, so it enters the slopes as if it lay still there. Couples add their own.
 *
 * <p>On the way to a balance the height need not be found at each direction: heel, trim and height
 * are three unknowns of one energy. What the boat still has to sink is then eliminated from energy
 * and slopes to first order (the Schur complement of the height in Newton's equations), so that a
 * turn and its {@link #heightAfter} are one Newton step in all three.
 */
final class Settling {
  final WaterPlane plane;
  final ImmersedPart part;
  final double energy;
  final double heelMoment;
  final double trimMoment;
  final Restoring restoring;

  /** How far the water still has to rise about the boat, m; nothing where that was found out. */
  final double rise;

  private Settling(
      Floating floating, ImmersedPart part, List<ImmersedPart> pools, boolean settled) {
    this.plane = part.plane();
    this.part = part;
    double fixed = floating.fixedVolume();
    double missing = floating.neededVolume() - part.volume();
    this.rise = settled ? 0 : missing / part.area();
    Vector3 centre = floating.centre();
    double own = fixed * plane.above(centre) - part.momentS() - missing * rise / 2;
    double heel = fixed * centre.dot(plane.athwart()) - part.momentV() - rise * part.areaV();
    double trim = part.momentU() - fixed * centre.dot(plane.ahead()) + rise * part.areaU();
    double transverse = part.transverseInertia();
    double longitudinal = part.longitudinalInertia();
    double product = part.productInertia();
    for (ImmersedPart pool : pools) {
      double above = pool.plane().height() - plane.height();
      own += pool.momentS() + above * pool.volume();
      heel += pool.momentV();
      trim -= pool.momentU();
      transverse -= pool.transverseInertia();
      longitudinal -= pool.longitudinalInertia();
      product -= pool.productInertia();
    }
    Restoring stiffness = new Restoring(transverse - own, longitudinal - own, -product);
    double unit = 1 / (floating.density() * Gravity.STANDARD);
    for (Couple couple : floating.couples()) {
      own += unit * couple.energy(plane);
      heel += unit * couple.heelMoment(plane);
      trim += unit * couple.trimMoment(plane);
      stiffness = stiffness.plus(couple.curvature(plane), unit);
    }
    this.energy = own;
    this.heelMoment = heel;
    this.trimMoment = trim;
    this.restoring = stiffness;
  }

  /**
   * Finds the height at which the needed volume is immersed; none when all that lifts is too
   * little, or when loose water does not fit under its lid.
   *
   * @param guess a height to start from
   */
  static Optional<Settling> at(Floating floating, Vector3 up, double guess, Immersion immersion) {
    return at(floating, up, guess, immersion, Level.EXACT);
  }

  /** The same with the water only nearly at its height; {@link #rise} says what is left. */
  static Optional<Settling> nearly(
      Floating floating, Vector3 up, double guess, Immersion immersion) {
    return at(floating, up, guess, immersion, Level.ROUGH);
  }

  private static Optional<Settling> at(
      Floating floating, Vector3 up, double guess, Immersion immersion, double rise) {
    List<ImmersedPart> pools = new ArrayList<>(floating.pools().size());
    for (Pool pool : floating.pools()) {
      Optional<ImmersedPart> lies = pool.lies(up, immersion);
      if (lies.isEmpty()) {
        return Optional.empty();
      }
      pools.add(lies.get());
    }
    double needed = floating.neededVolume();
    return Level.find(floating.lifts(), needed, up, guess, immersion, rise)
        .map(part -> new Settling(floating, part, pools, isSettled(part, needed, rise)));
  }

  // A search that ended between two heights the sums cannot tell apart has nothing left to find.
  private static boolean isSettled(ImmersedPart part, double needed, double rise) {
    double missing = Math.abs(needed - part.volume());
    return missing <= Level.FINE * Math.max(1, needed) || !(missing <= rise * part.area());
  }

  boolean settled() {
    return rise == 0;
  }

  /** The plane with the water at its height, to first order. */
  WaterPlane settledPlane() {
    return plane.withHeight(plane.height() + rise);
  }

  /** Where the water will stand after a small turn, to first order: it pivots on the waterplane. */
  double heightAfter(double heel, double trim) {
    return plane.height() + rise + (heel * part.areaV() - trim * part.areaU()) / part.area();
  }

  double moment() {
    return Math.hypot(heelMoment, trimMoment);
  }

  Pose pose(Floating floating) {
    return new Pose(plane, part, restoring, floating.neededVolume());
  }
}
