package thwartwise.afloat;

import java.util.Optional;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * A boat held at a direction and let sink until weight and buoyancy balance: energy, the moments
 * that turn it, and its stiffness.
 *
 * <p>Potential energy over ρg is V₀ (n·G) − n·S with V₀ the needed volume and S the first moment of
 * the immersed one; its slopes are V₀ times the level distances of G from B, its curvature the
 * second moments of the waterplane less V₀ times the height of G above B.
 */
final class Settling {
  private static final double VOLUME_TOLERANCE = 1e-13;
  private static final int MOST_STEPS = 80;

  final WaterPlane plane;
  final ImmersedPart part;
  final double energy;
  final double heelMoment;
  final double trimMoment;
  final Restoring restoring;

  private Settling(Floating floating, WaterPlane plane, ImmersedPart part) {
    double needed = floating.neededVolume();
    Vector3 centre = floating.centre();
    this.plane = plane;
    this.part = part;
    this.energy = needed * plane.above(centre) - part.momentS();
    this.heelMoment = needed * centre.dot(plane.athwart()) - part.momentV();
    this.trimMoment = part.momentU() - needed * centre.dot(plane.ahead());
    this.restoring =
        new Restoring(
            part.transverseInertia() - energy,
            part.longitudinalInertia() - energy,
            -part.productInertia());
  }

  /**
   * Finds the height at which the needed volume is immersed; none when all that lifts is too
   * little.
   *
   * @param guess a height to start from
   */
  static Optional<Settling> at(Floating floating, Vector3 up, double guess, Immersion immersion) {
    double needed = floating.neededVolume();
    if (!(floating.liftVolume() > needed)) {
      return Optional.empty();
    }
    Span reach = floating.extent(up);
    double low = reach.from();
    double high = reach.to();
    double height = reach.contains(guess) ? guess : reach.middle();
    for (int step = 0; step < MOST_STEPS; step++) {
      WaterPlane plane = new WaterPlane(up, height);
      ImmersedPart part = floating.immersed(immersion, plane);
      double missing = needed - part.volume();
      if (Math.abs(missing) <= VOLUME_TOLERANCE * Math.max(1, needed)) {
        return Optional.of(new Settling(floating, plane, part));
      }
      if (missing > 0) {
        low = height;
      } else {
        high = height;
      }
      if (high - low <= 1e-15 * Math.max(1, Math.abs(height))) {
        return Optional.of(new Settling(floating, plane, part));
      }
      double newton = height + missing / part.area();
      height = newton > low && newton < high ? newton : (low + high) / 2;
    }
    return Optional.empty();
  }

  /** Where the water will stand after a small turn, to first order: it pivots on the waterplane. */
  double heightAfter(double heel, double trim) {
    return plane.height() + (heel * part.areaV() - trim * part.areaU()) / part.area();
  }

  double moment() {
    return Math.hypot(heelMoment, trimMoment);
  }

  Pose pose(Floating floating) {
    return new Pose(plane, part, restoring, floating.neededVolume());
  }
}
