package thwartwise.afloat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * The search for the poses at which a boat comes to rest.
 *
 * <p>The unknowns are the upward unit vector and the water's height. From upright the potential
 * energy is followed downhill in turns of at most two degrees (Newton with the exact stiffness
 * inside a trust region), then again from a nudge of one degree to port, starboard, bow and stern.
 * Small turns follow the valley the boat would roll down and do not jump into another one; turns of
 * up to eight degrees are taken only where they and the turn before went down a firm bowl as
 * foreseen.
 */
public final class Equilibrium {
  private static final double NUDGE = Math.toRadians(1);
  private static final double LONGEST_TURN = Math.toRadians(2);

  /** The longest turn that goes as foreseen down a bowl, after one that did. */
  private static final double LONGEST_FORESEEN_TURN = Math.toRadians(8);

  /** A turn that is longer by more than rounding. */
  private static final double LONGER = LONGEST_TURN * (1 + 1e-9);

  /** The share of the foreseen drop in energy by which the drop of such a turn may differ. */
  private static final double FORESEEN = 0.1;

  /**
   * A last turn, rad, so short that its result need not be computed: its error is its square times
   * the rate of change of the stiffness, some tens in a radian.
   */
  private static final double LAST_TURN = 3e-5;

  /** The same where it only matters that figures are far from their limits, rad and m. */
  private static final double ROUGH_LAST_TURN = 2e-3;

  private static final double SHORTEST_TURN = 1e-12;
  private static final double MOMENT_TOLERANCE = 1e-11;
  private static final int MOST_TURNS = 600;

  /** Poses nearer than this are the same. */
  private static final double SAME = Math.toRadians(0.05);

  /** A longitudinal metacentric height, m, that no nudge of a degree overcomes. */
  private static final double STIFF = 2;

  /** If Newton's turn lands this near the balance from which it was nudged, it leads back there. */
  private static final double NEAR = NUDGE / 4;

  /**
   * A stiffness well above zero, m of metacentric height: a little more load does not remove it.
   */
  private static final double SOFT = 0.05;

  /** The greatest difference in draft of a boat loaded nearly the same, m. */
  private static final double DEEPER = 0.05;

  /**
   * The number of turns from the balance of nearly the same load; one or two usually are enough.
   */
  private static final int FEW_TURNS = 4;

  private static final double[][] NUDGES = {{NUDGE, 0}, {-NUDGE, 0}, {0, NUDGE}, {0, -NUDGE}};

  // A boat balanced on a knife's edge stays there when it is nudged fore and aft.
  private static final double[][] SOONEST = {{0, NUDGE}, {0, -NUDGE}, {NUDGE, 0}, {-NUDGE, 0}};

  static final Vector3 UPRIGHT = Vector3.of(0, 0, 1);

  private final FloatingBody floating;
  private final BiConsumer<HydrostaticState, HydrostaticState> stepped;
  private final Predicate<WaterPlane> over;

  /** The longest last turn whose result need not be computed, rad; 0 where every turn's is. */
  private final double lastTurn;

  private final Immersion immersion = new Immersion();

  /** The least stiffness so far, m of metacentric height. */
  private double softest = Double.POSITIVE_INFINITY;

  private Equilibrium(
      FloatingBody floating, BiConsumer<HydrostaticState, HydrostaticState> stepped) {
    this(floating, stepped, plane -> false, 0);
  }

  private Equilibrium(
      FloatingBody floating,
      BiConsumer<HydrostaticState, HydrostaticState> stepped,
      Predicate<WaterPlane> over,
      double lastTurn) {
    this.floating = floating;
    this.stepped = stepped;
    this.over = over;
    this.lastTurn = lastTurn;
  }

  /** Every pose reached from upright and from a nudge to each side. */
  public static Equilibria from(FloatingBody floating) {
    return from(floating, UPRIGHT);
  }

  /**
   * Every pose reached from another direction of up and from a nudge to each side of where that
   * leads.
   */
  public static Equilibria from(FloatingBody floating, Vector3 up) {
    return from(floating, up, (before, after) -> {});
  }

  /** The same where the height of the water there is nearly known. */
  static Equilibria from(FloatingBody floating, WaterPlane plane) {
    return from(floating, plane.up(), plane.height(), (before, after) -> {});
  }

  /**
   * Every pose, with the balance that the nudges began at.
   *
   * @param first empty where the boat sinks, or none was found
   */
  record Found(Equilibria rest, Optional<HydrostaticState> first) {}

  /**
   * Every pose reached from a balance of the same boat with another amount of loose water, if there
   * is one, and otherwise from upright.
   */
  static Found found(FloatingBody floating, Optional<HydrostaticState> before) {
    if (!(floating.liftVolume() > floating.neededVolume())) {
      return new Found(Equilibria.none(Equilibria.Ending.SINKS), Optional.empty());
    }
    Equilibrium search = new Equilibrium(floating, (from, to) -> {});
    Optional<HydrostaticState> first = search.first(before);
    return new Found(
        first
            .map(balance -> search.nudged(balance, NUDGES, pose -> false))
            .orElse(Equilibria.none(Equilibria.Ending.NOT_FOUND)),
        first);
  }

  /**
   * A balance that the nudges would begin at.
   *
   * @param here a state so near to it that it is known to a tenth of a degree and a millimetre
   * @param pose the balance, to first order
   */
  record Rough(HydrostaticState here, Pose pose) {}

  /** The first balance of {@link #found}, roughly and without nudges. */
  static Optional<Rough> rough(FloatingBody floating, Optional<HydrostaticState> before) {
    if (!(floating.liftVolume() > floating.neededVolume())) {
      return Optional.empty();
    }
    Equilibrium search =
        new Equilibrium(floating, (from, to) -> {}, plane -> false, ROUGH_LAST_TURN);
    return search.first(before).map(here -> new Rough(here, search.pose(here)));
  }

  private Optional<HydrostaticState> first(Optional<HydrostaticState> before) {
    return before
        .flatMap(known -> known.filled(floating, immersion))
        .flatMap(start -> settle(start, Optional.empty()))
        .or(() -> settle(UPRIGHT, Double.NaN));
  }

  /**
   * Every pose for a question that an unstable pose answers, and so does a boat that goes over.
   * Nothing is searched after the first such pose, and a boat that goes over on its way down is not
   * followed to its rest; the pose it passed stands for it.
   *
   * @param over when a boat has gone over for good
   */
  public static Equilibria until(FloatingBody floating, Predicate<WaterPlane> over) {
    if (!(floating.liftVolume() > floating.neededVolume())) {
      return Equilibria.none(Equilibria.Ending.SINKS);
    }
    return new Equilibrium(floating, (before, after) -> {}, over, LAST_TURN).untilOver();
  }

  /**
   * The same, begun at a cached balance of a boat loaded nearly the same, if there is one and it
   * leads to an equilibrium in the same bowl.
   *
   * @param boat what lifts it apart from its people
   */
  static Equilibria until(
      FloatingBody floating, Predicate<WaterPlane> over, LiftKey boat, NearBalances known) {
    Optional<Pose> rest = nextTo(known, floating, over, boat);
    return rest.isPresent()
        ? new Equilibria(List.of(rest.get()), Equilibria.Ending.RESTS)
        : keeping(floating, over, false, boat, known);
  }

  /**
   * Every pose from upright, or until one decides; the balances found are kept as starting points.
   */
  static Equilibria keeping(
      FloatingBody floating,
      Predicate<WaterPlane> over,
      boolean whole,
      LiftKey boat,
      NearBalances known) {
    if (!(floating.liftVolume() > floating.neededVolume())) {
      return Equilibria.none(Equilibria.Ending.SINKS);
    }
    Equilibrium search =
        whole
            ? new Equilibrium(floating, (before, after) -> {})
            : new Equilibrium(floating, (before, after) -> {}, over, LAST_TURN);
    Equilibria found =
        whole ? search.search(UPRIGHT, Double.NaN, NUDGES, pose -> false) : search.untilOver();
    if (search.wentDownOneBowl(found, over)) {
      known.keep(boat, floating, found.reached().get(0).part());
    }
    return found;
  }

  /** The equilibrium reached from a cached balance, if it is as good as one from upright. */
  static Optional<Pose> nextTo(
      NearBalances known, FloatingBody floating, Predicate<WaterPlane> over, LiftKey boat) {
    return floating.liftVolume() > floating.neededVolume()
        ? new Equilibrium(floating, (before, after) -> {}, over, LAST_TURN)
            .nearest(known.near(boat, floating))
        : Optional.empty();
  }

  private Equilibria untilOver() {
    return search(UPRIGHT, Double.NaN, SOONEST, pose -> !pose.stable() || over.test(pose.plane()));
  }

  /** Whether there is one equilibrium and the way there from upright was in one bowl. */
  private boolean wentDownOneBowl(Equilibria found, Predicate<WaterPlane> hasGoneOver) {
    return found.reached().size() == 1
        && softest > SOFT
        && !hasGoneOver.test(found.reached().get(0).plane());
  }

  /** The equilibrium from the nearest of some balances. */
  private Optional<Pose> nearest(Stream<NearBalances.Balance> known) {
    return known
        .map(balance -> HydrostaticState.nextTo(balance, floating, immersion))
        .filter(this::isFirm)
        .min(
            Comparator.comparingDouble(
                start -> TrustRegionStep.downhill(start, LONGEST_TURN).size()))
        .flatMap(this::near);
  }

  private boolean isFirm(HydrostaticState here) {
    return here.part.area() > 0 && here.restoring.softest() > SOFT * floating.neededVolume();
  }

  /**
   * The equilibrium reached by a few Newton turns; none where it is more than two degrees away, or
   * much deeper or less deep, where little stiffness is left, or where a nudge leads elsewhere.
   *
   * @param start the boat at the balance of another load
   */
  private Optional<Pose> near(HydrostaticState start) {
    HydrostaticState here = start;
    for (int turn = 0; turn < FEW_TURNS; turn++) {
      TrustRegionStep step = TrustRegionStep.downhill(here, LONGEST_TURN);
      Vector3 up = here.plane.turned(step.heel(), step.trim());
      double rise = here.heightAfter(step.heel(), step.trim()) - start.plane.height();
      if (!(up.minus(start.plane.up()).norm() < LONGEST_TURN) || !(Math.abs(rise) < DEEPER)) {
        return Optional.empty();
      }
      Optional<HydrostaticState> next =
          here.turned(up, step.heel(), step.trim(), immersion).filter(this::isFirm);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      here = next.get();
      if (isNearlyThere(here)) {
        return returnsAlways(here) && setsOutToward(here) && !over.test(here.settledPlane())
            ? Optional.of(pose(here))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /**
   * Whether the boat let go upright sets out to the side on which it was found. One that can lie on
   * either side lies on the other for a load only a little different.
   */
  private boolean setsOutToward(HydrostaticState found) {
    double heel = found.plane.heel();
    return Math.abs(heel) <= NUDGE
        || HydrostaticState.nearly(floating, UPRIGHT, Double.NaN, immersion)
            .map(upright -> TrustRegionStep.downhill(upright, LONGEST_TURN).heel() * heel > 0)
            .orElse(false);
  }

  /**
   * The same, observed.
   *
   * @param stepped receives every step taken, from where and to where
   */
  static Equilibria from(
      FloatingBody floating, Vector3 up, BiConsumer<HydrostaticState, HydrostaticState> stepped) {
    return from(floating, up, Double.NaN, stepped);
  }

  private static Equilibria from(
      FloatingBody floating,
      Vector3 up,
      double height,
      BiConsumer<HydrostaticState, HydrostaticState> stepped) {
    if (!(floating.liftVolume() > floating.neededVolume())) {
      return Equilibria.none(Equilibria.Ending.SINKS);
    }
    return new Equilibrium(floating, stepped).search(up, height, NUDGES, pose -> false);
  }

  /** The equilibrium of the boat released at a direction. */
  static Optional<Pose> letGo(FloatingBody floating, Vector3 up, double height) {
    return new Equilibrium(floating, (before, after) -> {})
        .settle(up, height)
        .map(HydrostaticState::pose);
  }

  /** Whether every nudge leads back; one onto the way from upright does. */
  private boolean returnsAlways(HydrostaticState here) {
    return Stream.of(SOONEST)
        .filter(nudge -> !isTowardUpright(here, nudge[0]))
        .allMatch(nudge -> afterNudge(here, nudge[0], nudge[1]).filter(e -> e == here).isPresent());
  }

  /** Whether a nudge in heel leads back onto the way that the boat came down from upright. */
  private static boolean isTowardUpright(HydrostaticState balance, double heel) {
    return heel * balance.plane.heel() < 0 && Math.abs(balance.plane.heel()) > NUDGE;
  }

  private Equilibria search(Vector3 up, double height, double[][] nudges, Predicate<Pose> decides) {
    return settle(up, height)
        .map(first -> nudged(first, nudges, decides))
        .orElse(Equilibria.none(Equilibria.Ending.NOT_FOUND));
  }

  /** Every pose reached from a nudge to each side of a balance. */
  private Equilibria nudged(HydrostaticState first, double[][] nudges, Predicate<Pose> decides) {
    List<Pose> reached = new ArrayList<>();
    boolean oneBowl = lastTurn > 0 && softest > SOFT;
    for (double[] nudge : nudges) {
      if (oneBowl && isTowardUpright(first, nudge[0])) {
        continue;
      }
      Optional<HydrostaticState> end = afterNudge(first, nudge[0], nudge[1]);
      if (end.isEmpty()) {
        return Equilibria.none(Equilibria.Ending.NOT_FOUND);
      }
      Pose pose = pose(end.get());
      add(pose, reached);
      if (decides.test(pose)) {
        break;
      }
    }
    return new Equilibria(reached, Equilibria.Ending.RESTS);
  }

  /** Releases the boat a little to one side of a balance. */
  private Optional<HydrostaticState> afterNudge(
      HydrostaticState balance, double heel, double trim) {
    if (heel == 0 && isStiffInTrim(balance)) {
      return Optional.of(balance);
    }
    return balance
        .turned(heel, trim, immersion)
        .flatMap(nudged -> settle(nudged, Optional.of(balance)));
  }

  // For one degree to overcome it, metres of metacentric height would have to vanish at both ends
  // within the first few millimetres of the way. A boat is never so stiff in heel.
  private static boolean isStiffInTrim(HydrostaticState balance) {
    return balance.pose().stable()
        && balance.restoring.trimHeelFree() > STIFF * balance.neededVolume();
  }

  // Where the energy is a bowl at both places and Newton's turn leads nearly from one to the other,
  // every further step would only refine the balance already known.
  private static boolean comesBack(HydrostaticState balance, HydrostaticState here) {
    if (!(balance.restoring.softest() > 0) || !(here.restoring.softest() > 0)) {
      return false;
    }
    TrustRegionStep back = TrustRegionStep.downhill(here, LONGEST_TURN);
    Vector3 landing = here.plane.turned(back.heel(), back.trim());
    return landing.minus(balance.plane.up()).norm() < NEAR;
  }

  private static void add(Pose pose, List<Pose> reached) {
    boolean known =
        reached.stream().anyMatch(p -> p.plane().up().minus(pose.plane().up()).norm() < SAME);
    if (!known) {
      reached.add(pose);
    }
  }

  /** Follows the energy downhill from a direction until nothing turns the boat any more. */
  private Optional<HydrostaticState> settle(Vector3 up, double height) {
    return HydrostaticState.nearly(floating, up, height, immersion)
        .flatMap(start -> settle(start, Optional.empty()));
  }

  /**
   * The same, until the way clearly leads back to a known balance.
   *
   * @param known the balance
   */
  private Optional<HydrostaticState> settle(
      HydrostaticState start, Optional<HydrostaticState> known) {
    HydrostaticState here = start;
    double radius = LONGEST_TURN;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      if (!(here.part.area() > 0)) {
        return Optional.empty();
      }
      softest = Math.min(softest, here.restoring.softest() / floating.neededVolume());
      if (known.isPresent() && comesBack(known.get(), here)) {
        return known;
      }
      boolean arrived =
          over.test(here.settledPlane())
              || here.moment() <= MOMENT_TOLERANCE * floating.neededVolume();
      if (arrived && here.isSettled()) {
        return Optional.of(here);
      }
      if (isNearlyThere(here)) {
        return Optional.of(here);
      }
      TrustRegionStep step = TrustRegionStep.downhill(here, radius);
      Optional<HydrostaticState> next =
          arrived ? Optional.empty() : here.turned(step.heel(), step.trim(), immersion);
      boolean foreseen = next.isPresent() && goesAsForeseen(here, next.get(), step);
      if (step.size() > LONGER && !foreseen) {
        radius = LONGEST_TURN;
      } else if (next.isPresent() && goesDown(here, next.get(), step)) {
        stepped.accept(here, next.get());
        here = next.get();
        radius = Math.min(foreseen ? LONGEST_FORESEEN_TURN : LONGEST_TURN, 2 * radius);
      } else if (!here.isSettled()) {
        here = here.settled(immersion).orElseThrow();
      } else {
        radius = step.size() / 4;
      }
      if (radius < SHORTEST_TURN) {
        return rest(here);
      }
    }
    return Optional.empty();
  }

  /** Whether one last turn, too short to compute its result, ends in a balance. */
  private boolean isNearlyThere(HydrostaticState here) {
    return lastTurn > 0
        && here.isSettled(lastTurn)
        && here.pose().stable()
        && TrustRegionStep.downhill(here, LONGEST_TURN).size() <= lastTurn;
  }

  private Pose pose(HydrostaticState end) {
    return isNearlyThere(end)
        ? end.poseAfter(TrustRegionStep.downhill(end, LONGEST_TURN))
        : end.pose();
  }

  // Down a bowl that is firm at both ends, by as much as the first end says: had there been another
  // valley between them, the drop would not be the one that energy and stiffness foresee.
  private boolean goesAsForeseen(
      HydrostaticState here, HydrostaticState next, TrustRegionStep step) {
    double drop = here.energy - next.energy;
    return isFirm(here)
        && isFirm(next)
        && Math.abs(drop - step.expectedDrop()) <= FORESEEN * step.expectedDrop();
  }

  // Near the bottom the energy no longer tells two poses apart; the moment still does.
  private static boolean goesDown(
      HydrostaticState here, HydrostaticState next, TrustRegionStep step) {
    double noise = 1e-14 * Math.max(1e-3, Math.abs(here.energy));
    if (step.expectedDrop() < 100 * noise) {
      return next.moment() < here.moment();
    }
    return next.energy < here.energy;
  }

  // A corner of the energy (an edge just leaving the water) can stop the turns while a moment is
  // left that no scale could weigh; anything more is not a balance.
  private Optional<HydrostaticState> rest(HydrostaticState here) {
    return here.moment() <= 1e-7 * floating.neededVolume() ? Optional.of(here) : Optional.empty();
  }
}
