package thwartwise.afloat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Vector3;

/**
 * Balances from which searches begin instead of from upright. Thread-safe and bounded.
 *
 * <p>Only balances reached from upright down a single bowl are used: the stiffness was well above
 * zero at every step of the way and no nudge led elsewhere. A boat loaded nearly the same is in
 * nearly the same bowl, as is one with a measurement moved by its spread, and a bowl has one
 * bottom. A boat found heeled must besides set out to that side from upright ({@link Equilibrium}).
 * So they are to change how soon an equilibrium is found and not which one. Loose water and forces
 * take no part.
 */
final class NearBalances {
  private static final int MOST = 20_000;

  // kg and m: between loads as near as that a boat heels by a degree or two.
  private static final double MASS = 8;
  private static final double ALONG = 0.08;
  private static final double ACROSS = 0.02;
  private static final double UP = 0.08;

  private static final Queue<Balance> NONE = new ConcurrentLinkedQueue<>();

  private final Map<Load, Balance> byLoad = new ConcurrentHashMap<>();
  private final Map<Object, Queue<Balance>> byKind = new ConcurrentHashMap<>();
  private final AtomicInteger queued = new AtomicInteger();
  private final Map<List<Lift>, Balance> byLift = new ConcurrentHashMap<>();
  private final Optional<NearBalances> measured;

  /**
   * @param measured those of the boat as measured, where this one has a measurement moved
   */
  NearBalances(Optional<NearBalances> measured) {
    this.measured = measured;
  }

  /**
   * A balance and the body afloat in it.
   *
   * @param part what was under water
   */
  record Balance(FloatingBody floating, ImmersedPart part) {}

  private record Load(Object boat, long mass, long along, long across, long up) {
    static Load of(Object boat, FloatingBody floating) {
      return new Load(
          boat,
          Math.round(floating.mass() / MASS),
          Math.round(floating.centre().x() / ALONG),
          Math.round(floating.centre().y() / ACROSS),
          Math.round(floating.centre().z() / UP));
    }
  }

  private static boolean isPlain(FloatingBody floating) {
    return floating.pools().isEmpty() && floating.couples().isEmpty();
  }

  /**
   * The balances of a boat lifted by the same and loaded nearly the same; for a boat with a
   * measurement moved, the one of the boat as measured that is loaded most nearly the same.
   */
  Stream<Balance> near(LiftKey boat, FloatingBody floating) {
    if (!isPlain(floating)) {
      return Stream.empty();
    }
    return measured.isPresent()
        ? measured.get().nearest(boat.kind(), floating).stream()
        : Stream.of(byLift.get(floating.lifts()), byLoad.get(Load.of(boat.solids(), floating)))
            .filter(Objects::nonNull);
  }

  private Optional<Balance> nearest(Object kind, FloatingBody floating) {
    Balance nearest = null;
    double least = Double.POSITIVE_INFINITY;
    for (Balance balance : byKind.getOrDefault(kind, NONE)) {
      double apart = apart(balance.floating, floating);
      if (apart < least) {
        least = apart;
        nearest = balance;
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** The square of how many of the distances above two loads are apart. */
  private static double apart(FloatingBody one, FloatingBody other) {
    Vector3 from = one.centre();
    Vector3 to = other.centre();
    return square((one.mass() - other.mass()) / MASS)
        + square((from.x() - to.x()) / ALONG)
        + square((from.y() - to.y()) / ACROSS)
        + square((from.z() - to.z()) / UP);
  }

  private static double square(double length) {
    return length * length;
  }

  /** Those of a boat with a measurement moved are not kept: it begins where it did as measured. */
  void keep(LiftKey boat, FloatingBody floating, ImmersedPart part) {
    if (!isPlain(floating) || measured.isPresent()) {
      return;
    }
    Balance balance = new Balance(floating, part);
    if (byLoad.size() < MOST) {
      byLoad.putIfAbsent(Load.of(boat.solids(), floating), balance);
    }
    if (queued.getAndIncrement() < MOST) {
      byKind.computeIfAbsent(boat.kind(), kind -> new ConcurrentLinkedQueue<>()).add(balance);
    }
    if (byLift.size() < MOST) {
      byLift.put(floating.lifts(), balance);
    }
  }
}
