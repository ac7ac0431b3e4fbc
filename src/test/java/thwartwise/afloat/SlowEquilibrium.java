package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import thwartwise.geometry.SlowImmersion;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * Finds where a boat comes to rest.
 *
 * <p>The unknowns are the upward unit vector and the water's height. From upright the potential
 * energy is followed downhill in turns of at most two degrees (Newton with the exact stiffness
 * inside a trust region), then again from a nudge of one degree to port, starboard, bow and stern.
 * Small turns follow the valley the boat would roll down and do not leap into another one.
 */
public final class SlowEquilibrium {
  private static final double NUDGE = Math.toRadians(1);
  private static final double LONGEST_TURN = Math.toRadians(2);
  private static final double SHORTEST_TURN = 1e-12;
  private static final double MOMENT_TOLERANCE = 1e-11;
  private static final int MOST_TURNS = 600;

  /** Poses nearer than this are one. */
  private static final double SAME = Math.toRadians(0.05);

  /**
   * Beyond this, m of lever, a boat is on its way and the sea's height need not be found finely.
   */
  private static final double FAR = 1e-4;

  private static final double[][] NUDGES = {{NUDGE, 0}, {-NUDGE, 0}, {0, NUDGE}, {0, -NUDGE}};

  // A boat balanced on a knife's edge stays there when it is nudged fore and aft: soonest told.
  private static final double[][] SOONEST = {{0, NUDGE}, {0, -NUDGE}, {NUDGE, 0}, {-NUDGE, 0}};

  static final Vector3 UPRIGHT = Vector3.of(0, 0, 1);

  private final FloatingBody floating;
  private final BiConsumer<SlowSettling, SlowSettling> stepped;
  private final Predicate<WaterPlane> over;
  private final SlowImmersion immersion = new SlowImmersion();

  private SlowEquilibrium(FloatingBody floating, BiConsumer<SlowSettling, SlowSettling> stepped) {
    this(floating, stepped, plane -> false);
  }

  private SlowEquilibrium(
      FloatingBody floating,
      BiConsumer<SlowSettling, SlowSettling> stepped,
      Predicate<WaterPlane> over) {
    this.floating = floating;
    this.stepped = stepped;
    this.over = over;
  }

  /** Every pose reached from upright and from a nudge to each side. */
  public static Equilibria from(FloatingBody floating) {
    return from(floating, UPRIGHT);
  }

  /** Every pose reached from another way up and from a nudge to each side of where that leads. */
  public static Equilibria from(FloatingBody floating, Vector3 up) {
    return from(floating, up, (before, after) -> {});
  }

  /**
   * The same for a question that an unsteady pose answers, and a boat that goes over: nothing is
   * looked for after the first such pose, and a boat that is over on its way down is not followed
   * to where it comes to lie; the pose it passed stands for it.
   *
   * @param over how a boat lies that has gone over for good
   */
  public static Equilibria until(FloatingBody floating, Predicate<WaterPlane> over) {
    if (!(floating.liftVolume() > floating.neededVolume())) {
      return Equilibria.none(Equilibria.Ending.SINKS);
    }
    Predicate<Pose> decides = pose -> !pose.stable() || over.test(pose.plane());
    return new SlowEquilibrium(floating, (before, after) -> {}, over)
        .search(UPRIGHT, SOONEST, decides);
  }

  /**
   * The same, watched.
   *
   * @param stepped told of every step taken, from where and to where
   */
  static Equilibria from(
      FloatingBody floating, Vector3 up, BiConsumer<SlowSettling, SlowSettling> stepped) {
    if (!(floating.liftVolume() > floating.neededVolume())) {
      return Equilibria.none(Equilibria.Ending.SINKS);
    }
    return new SlowEquilibrium(floating, stepped).search(up, NUDGES, pose -> false);
  }

  /** Where the boat comes to rest when it is let go at a direction. */
  static Optional<Pose> letGo(FloatingBody floating, Vector3 up, double height) {
    return new SlowEquilibrium(floating, (before, after) -> {})
        .settle(up, height)
        .map(rest -> rest.pose(floating));
  }

  private Equilibria search(Vector3 up, double[][] nudges, Predicate<Pose> decides) {
    Optional<SlowSettling> first = settle(up, floating.extent(up).middle());
    if (first.isEmpty()) {
      return Equilibria.none(Equilibria.Ending.NOT_FOUND);
    }
    List<Pose> reached = new ArrayList<>();
    for (double[] nudge : nudges) {
      Optional<SlowSettling> end = afterNudge(first.get(), nudge[0], nudge[1]);
      if (end.isEmpty()) {
        return Equilibria.none(Equilibria.Ending.NOT_FOUND);
      }
      Pose pose = end.get().pose(floating);
      add(pose, reached);
      if (decides.test(pose)) {
        break;
      }
    }
    return new Equilibria(reached, Equilibria.Ending.RESTS);
  }

  /** Lets the boat go a little to one side of a balance. */
  private Optional<SlowSettling> afterNudge(SlowSettling balance, double heel, double trim) {
    Vector3 up = balance.plane.turned(heel, trim);
    double height = balance.heightAfter(heel, trim);
    Optional<SlowSettling> nudged = SlowSettling.nearly(floating, up, height, immersion);
    if (nudged.isPresent() && comesStraightBack(balance, nudged.get())) {
      return Optional.of(balance);
    }
    return settle(up, height);
  }

  // Where the energy is a bowl at both places and Newton's turn leads from one to the other, every
  // further step would only refine the balance already known.
  private static boolean comesStraightBack(SlowSettling balance, SlowSettling nudged) {
    if (!(balance.restoring.softest() > 0) || !(nudged.restoring.softest() > 0)) {
      return false;
    }
    SlowTurn back = SlowTurn.downhill(nudged, LONGEST_TURN);
    Vector3 landing = nudged.plane.turned(back.heel(), back.trim());
    return landing.minus(balance.plane.up()).norm() < SAME;
  }

  private static void add(Pose pose, List<Pose> reached) {
    boolean known =
        reached.stream().anyMatch(p -> p.plane().up().minus(pose.plane().up()).norm() < SAME);
    if (!known) {
      reached.add(pose);
    }
  }

  /** Follows the energy downhill from a direction to where nothing turns the boat any more. */
  private Optional<SlowSettling> settle(Vector3 up, double height) {
    Optional<SlowSettling> start = SlowSettling.at(floating, up, height, immersion);
    if (start.isEmpty()) {
      return start;
    }
    SlowSettling here = start.get();
    double radius = LONGEST_TURN;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      if (!(here.part.area() > 0)) {
        return Optional.empty();
      }
      if (over.test(here.plane) || here.moment() <= MOMENT_TOLERANCE * floating.neededVolume()) {
        return Optional.of(here);
      }
      SlowTurn step = SlowTurn.downhill(here, radius);
      Optional<SlowSettling> next = after(here, step);
      if (next.isPresent() && goesDown(here, next.get(), step)) {
        stepped.accept(here, next.get());
        here = next.get();
        radius = Math.min(LONGEST_TURN, 2 * radius);
      } else {
        radius = step.size() / 4;
      }
      if (radius < SHORTEST_TURN) {
        return rest(here);
      }
    }
    return Optional.empty();
  }

  // On the way the energy hardly feels the height (its slope there is nought); near the bottom the
  // moments do.
  private Optional<SlowSettling> after(SlowSettling here, SlowTurn step) {
    Vector3 up = here.plane.turned(step.heel(), step.trim());
    double height = here.heightAfter(step.heel(), step.trim());
    if (!isFar(here)) {
      return SlowSettling.at(floating, up, height, immersion);
    }
    Optional<SlowSettling> next = SlowSettling.nearly(floating, up, height, immersion);
    return next.isPresent() && !isFar(next.get())
        ? SlowSettling.at(floating, up, next.get().plane.height(), immersion)
        : next;
  }

  private boolean isFar(SlowSettling here) {
    return here.moment() > FAR * floating.neededVolume();
  }

  // Near the bottom the energy no longer tells two poses apart; the moment still does.
  private static boolean goesDown(SlowSettling here, SlowSettling next, SlowTurn step) {
    double noise = 1e-14 * Math.max(1e-3, Math.abs(here.energy));
    if (step.expectedDrop() < 100 * noise) {
      return next.moment() < here.moment();
    }
    return next.energy < here.energy;
  }

  // A corner of the energy (an edge just leaving the water) can stop the turns while a moment is
  // left that no scale could weigh; anything more is not a balance.
  private Optional<SlowSettling> rest(SlowSettling here) {
    return here.moment() <= 1e-7 * floating.neededVolume() ? Optional.of(here) : Optional.empty();
  }
}
