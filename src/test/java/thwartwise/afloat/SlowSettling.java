package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.SlowImmersion;
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
 */
final class SlowSettling {
  final WaterPlane plane;
  final ImmersedPart part;
  final double energy;
  final double heelMoment;
  final double trimMoment;
  final RestoringStiffness restoring;

  private SlowSettling(FloatingBody floating, ImmersedPart part, List<ImmersedPart> pools) {
    this.plane = part.plane();
    this.part = part;
    double fixed = floating.fixedVolume();
    Vector3 centre = floating.centre();
    double own = fixed * plane.above(centre) - part.momentS();
    double heel = fixed * centre.dot(plane.athwart()) - part.momentV();
    double trim = part.momentU() - fixed * centre.dot(plane.ahead());
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
    RestoringStiffness stiffness =
        new RestoringStiffness(transverse - own, longitudinal - own, -product);
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
  static Optional<SlowSettling> at(
      FloatingBody floating, Vector3 up, double guess, SlowImmersion immersion) {
    return at(floating, up, guess, immersion, SlowLevel.FINE);
  }

  /**
   * The same with the sea's height found only as far as it takes to see which way the boat goes.
   */
  static Optional<SlowSettling> nearly(
      FloatingBody floating, Vector3 up, double guess, SlowImmersion immersion) {
    return at(floating, up, guess, immersion, SlowLevel.COARSE);
  }

  private static Optional<SlowSettling> at(
      FloatingBody floating, Vector3 up, double guess, SlowImmersion immersion, double tolerance) {
    List<ImmersedPart> pools = new ArrayList<>(floating.pools().size());
    for (Pool pool : floating.pools()) {
      Optional<ImmersedPart> lies = lies(pool, up, immersion);
      if (lies.isEmpty()) {
        return Optional.empty();
      }
      pools.add(lies.get());
    }
    return SlowLevel.find(
            floating.lifts(), floating.neededVolume(), up, guess, immersion, tolerance)
        .map(part -> new SlowSettling(floating, part, pools));
  }

  /** Where the water will stand after a small turn, to first order: it pivots on the waterplane. */
  double heightAfter(double heel, double trim) {
    return plane.height() + (heel * part.areaV() - trim * part.areaU()) / part.area();
  }

  double moment() {
    return Math.hypot(heelMoment, trimMoment);
  }

  Pose pose(FloatingBody floating) {
    return new Pose(plane, part, restoring, floating.neededVolume());
  }

  private static Optional<ImmersedPart> lies(Pool pool, Vector3 up, SlowImmersion immersion) {
    return pool.volume() > 0
        ? SlowLevel.find(pool.hold(), pool.volume(), up, Double.NaN, immersion)
        : pool.lies(up, new thwartwise.geometry.Immersion());
  }
}
