package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Profile;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * The equilibrium of a boat under horizontal forces. Each has its equal and opposite reaction at
 * the height of the centre of the part of the hull seen under water from that side; the reaction is
 * fixed during a solve and found again at the worst pose after it, from which the next solve
 * starts, until it no longer moves.
 *
 * @param rest the poses reached
 * @param couples the forces with their last reactions
 */
public record EquilibriumUnderForces(Equilibria rest, List<Couple> couples) {
  private static final double LEVER_TOLERANCE = 1e-5;
  private static final int MOST_ROUNDS = 30;

  /** On a boat that stands on end or lies flat the plumb line leaves the plane of the force. */
  private static final double FLAT = 0.04;

  /** Afloat without the pull, and without a balance with it. */
  private static final Equilibria OVERPOWERED = Equilibria.none(Equilibria.Ending.OVERPOWERED);

  public EquilibriumUnderForces {
    couples = List.copyOf(couples);
  }

  /**
   * @param hull the outside of the hull, whose profile takes the reaction
   */
  public static EquilibriumUnderForces of(FloatingBody floating, List<Force> forces, Solid hull) {
    return of(floating, forces, hull, Equilibrium.from(floating));
  }

  /**
   * The same where the equilibrium without any pull is known already.
   *
   * @param unforced every pose
   */
  public static EquilibriumUnderForces of(
      FloatingBody floating, List<Force> forces, Solid hull, Equilibria unforced) {
    Equilibria rest = unforced;
    List<Couple> couples = List.of();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Optional<Pose> pose = rest.worst();
      if (pose.isEmpty()) {
        return new EquilibriumUnderForces(couples.isEmpty() ? rest : OVERPOWERED, couples);
      }
      List<Couple> next = couples(forces, hull, pose.get().plane());
      if (moved(couples, next, pose.get().plane()) < LEVER_TOLERANCE) {
        return new EquilibriumUnderForces(rest, next);
      }
      couples = next;
      rest = Equilibrium.from(floating.pulledBy(couples), pose.get().plane());
    }
    return new EquilibriumUnderForces(OVERPOWERED, couples);
  }

  private static double moved(List<Couple> before, List<Couple> after, WaterPlane plane) {
    if (before.size() != after.size()) {
      return Double.POSITIVE_INFINITY;
    }
    double most = 0;
    for (int i = 0; i < after.size(); i++) {
      most = Math.max(most, Math.abs(after.get(i).lever(plane) - before.get(i).lever(plane)));
    }
    return most;
  }

  private static List<Couple> couples(List<Force> forces, Solid hull, WaterPlane plane) {
    Solid under = hull.under(plane);
    double beside = plane.above(Profile.of(under, plane.athwart()).centre());
    double before = plane.above(Profile.of(under, plane.ahead()).centre());
    Vector3 up = plane.up();
    List<Couple> couples = new ArrayList<>();
    for (Force force : forces) {
      double height = plane.above(force.at());
      if (force.ahead() != 0) {
        Vector3 arm = plumb(Vector3.of(up.x(), 0, up.z()), height - before);
        couples.add(Couple.ahead(force.ahead(), force.at(), force.at().minus(arm)));
      }
      if (force.toPort() != 0) {
        Vector3 arm = plumb(Vector3.of(0, up.y(), up.z()), height - beside);
        couples.add(Couple.toPort(force.toPort(), force.at(), force.at().minus(arm)));
      }
    }
    return couples;
  }

  // A profile has a height but no place across the line of sight: force and reaction are assumed
  // plumb over each other at the pose, as they are on a boat that may swing.
  private static Vector3 plumb(Vector3 upInPlane, double lever) {
    return upInPlane.times(lever / Math.max(FLAT, upInPlane.dot(upInPlane)));
  }

  /**
   * A horizontal force on the boat, fixed relative to its heading: a line, the wind, the push of a
   * motor. Its vertical part is a weight at the same point and belongs to the loading.
   *
   * @param at its point of application, in the boat's axes, m
   * @param ahead N toward the bow
   * @param toPort N
   */
  public record Force(Vector3 at, double ahead, double toPort) {}
}
