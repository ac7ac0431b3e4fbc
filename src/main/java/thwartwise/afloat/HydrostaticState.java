package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.afloat.LevelSurface.Surface;
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
 * <p>On the way to a balance the heights need not be found at each direction: heel, trim and height
 * are three unknowns of one energy. How far each surface still has to rise is then eliminated from
 * energy and slopes to first order (the Schur complement of the height in Newton's equations), so
 * that a turn with the heights after it is one Newton step in all unknowns.
 */
final class HydrostaticState {
  private static final double[] NO_GUESSES = {};

  final WaterPlane plane;
  final ImmersedPart part;
  final double energy;
  final double heelMoment;
  final double trimMoment;
  final RestoringStiffness restoring;
  private final FloatingBody floating;
  private final Surface sea;
  private final List<Surface> pools;

  private HydrostaticState(FloatingBody floating, Surface sea, List<Surface> pools) {
    this.floating = floating;
    this.sea = sea;
    this.pools = pools;
    this.plane = sea.plane();
    this.part = sea.part();
    double fixed = floating.fixedVolume();
    Vector3 centre = floating.centre();
    double own = fixed * plane.above(centre) - sea.momentS();
    double heel = fixed * centre.dot(plane.athwart()) - sea.momentV();
    double trim = sea.momentU() - fixed * centre.dot(plane.ahead());
    double transverse = part.transverseInertia();
    double longitudinal = part.longitudinalInertia();
    double product = part.productInertia();
    for (int i = 0; i < pools.size(); i++) {
      Surface pool = pools.get(i);
      double above = pool.plane().height() - plane.height();
      own += pool.momentS() + above * floating.pools().get(i).volume();
      heel += pool.momentV();
      trim -= pool.momentU();
      transverse -= pool.part().transverseInertia();
      longitudinal -= pool.part().longitudinalInertia();
      product -= pool.part().productInertia();
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
  static Optional<HydrostaticState> at(
      FloatingBody floating, Vector3 up, double guess, Immersion immersion) {
    return at(floating, up, guess, NO_GUESSES, immersion, LevelSurface.EXACT);
  }

  /** The same with every surface only nearly at its height. */
  static Optional<HydrostaticState> nearly(
      FloatingBody floating, Vector3 up, double guess, Immersion immersion) {
    return at(floating, up, guess, NO_GUESSES, immersion, LevelSurface.ROUGH);
  }

  private static Optional<HydrostaticState> at(
      FloatingBody floating,
      Vector3 up,
      double guess,
      double[] poolGuesses,
      Immersion immersion,
      double rise) {
    List<Surface> pools = new ArrayList<>(floating.pools().size());
    for (int i = 0; i < floating.pools().size(); i++) {
      double poolGuess = poolGuesses.length == 0 ? Double.NaN : poolGuesses[i];
      Optional<Surface> lies = floating.pools().get(i).lies(up, poolGuess, immersion, rise);
      if (lies.isEmpty()) {
        return Optional.empty();
      }
      pools.add(lies.get());
    }
    return LevelSurface.surface(
            floating.lifts(), floating.neededVolume(), up, guess, immersion, rise)
        .map(sea -> new HydrostaticState(floating, sea, pools));
  }

  /**
   * The boat held in the balance of another load: what was under water then, without what lifted
   * only then, and with what lifts only now.
   */
  static HydrostaticState nextTo(
      NearBalances.Balance known, FloatingBody floating, Immersion immersion) {
    ImmersedPart part = underWater(known, floating.lifts(), immersion);
    double rise = (floating.neededVolume() - part.volume()) / part.area();
    return new HydrostaticState(floating, new Surface(part, rise), List.of());
  }

  private static ImmersedPart underWater(
      NearBalances.Balance known, List<Lift> now, Immersion immersion) {
    List<Lift> before = known.floating().lifts();
    if (before.equals(now)) {
      return known.part();
    }
    List<Lift> gone = before.stream().filter(l -> !now.contains(l)).toList();
    if (gone.size() == before.size()) {
      return Lift.immersed(now, known.part().plane(), immersion);
    }
    immersion.at(known.part().plane());
    gone.forEach(l -> immersion.add(l.solid(), -l.factor()));
    now.stream()
        .filter(l -> !before.contains(l))
        .forEach(l -> immersion.add(l.solid(), l.factor()));
    return known.part().plus(immersion.part());
  }

  /** The boat after a small turn, every surface nearly at its height. */
  Optional<HydrostaticState> turned(double heel, double trim, Immersion immersion) {
    return turned(plane.turned(heel, trim), heel, trim, immersion);
  }

  /**
   * The same in a direction to which the turn leads in first order.
   *
   * @param up the direction
   */
  Optional<HydrostaticState> turned(Vector3 up, double heel, double trim, Immersion immersion) {
    double[] guesses = new double[pools.size()];
    for (int i = 0; i < guesses.length; i++) {
      guesses[i] = pools.get(i).heightAfter(heel, trim);
    }
    return at(floating, up, heightAfter(heel, trim), guesses, immersion, LevelSurface.ROUGH);
  }

  /**
   * The same boat with another amount of loose water, in the same direction, every surface nearly
   * at its height; none where other water takes part.
   */
  Optional<HydrostaticState> filled(FloatingBody otherwise, Immersion immersion) {
    if (otherwise.pools().size() != pools.size()) {
      return Optional.empty();
    }
    double[] guesses = new double[pools.size()];
    for (int i = 0; i < guesses.length; i++) {
      double more = otherwise.pools().get(i).volume() - floating.pools().get(i).volume();
      guesses[i] = pools.get(i).heightWith(more);
    }
    double height = sea.heightWith(otherwise.neededVolume() - neededVolume());
    return at(otherwise, plane.up(), height, guesses, immersion, LevelSurface.ROUGH);
  }

  /** The height of the first loose water above a point, m; empty without any. */
  OptionalDouble poolOver(Vector3 point) {
    return pools.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(pools.get(0).height() - plane.up().dot(point));
  }

  /** The boat in the same direction with every surface at its height. */
  Optional<HydrostaticState> settled(Immersion immersion) {
    double[] guesses = pools.stream().mapToDouble(Surface::height).toArray();
    return at(floating, plane.up(), sea.height(), guesses, immersion, LevelSurface.EXACT);
  }

  boolean isSettled() {
    return isSettled(0);
  }

  /** Whether no surface still has to move by more than this, m. */
  boolean isSettled(double rise) {
    boolean all = Math.abs(sea.rise()) <= rise;
    for (Surface pool : pools) {
      all &= Math.abs(pool.rise()) <= rise;
    }
    return all;
  }

  /** The plane with the water at its height, to first order. */
  WaterPlane settledPlane() {
    return plane.withHeight(sea.height());
  }

  /** The height of the water after a small turn, to first order. */
  double heightAfter(double heel, double trim) {
    return sea.heightAfter(heel, trim);
  }

  double neededVolume() {
    return floating.neededVolume();
  }

  double moment() {
    return Math.sqrt(heelMoment * heelMoment + trimMoment * trimMoment);
  }

  /** The balance that a last small turn leads to, to first order. */
  Pose poseAfter(TrustRegionStep turn) {
    WaterPlane turned =
        new WaterPlane(
            plane.turned(turn.heel(), turn.trim()), heightAfter(turn.heel(), turn.trim()));
    return new Pose(turned, part, restoring, floating.neededVolume());
  }

  Pose pose() {
    return new Pose(plane, part, restoring, floating.neededVolume());
  }
}
