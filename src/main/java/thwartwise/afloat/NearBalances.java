package thwartwise.afloat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import thwartwise.geometry.ImmersedPart;

/**
 * Balances from which searches begin instead of from upright. Thread-safe and bounded.
 *
 * <p>Only balances reached from upright down a single bowl are used: the stiffness was well above
 * zero at every step of the way and no nudge led elsewhere. A boat loaded nearly the same is in
 * nearly the same bowl, as is one with a measurement moved by its spread, and a bowl has one
 * bottom. So they change how soon an equilibrium is found and never which one. Loose water and
 * forces take no part.
 */
final class NearBalances {
  private static final int MOST = 20_000;

  // kg and m: between loads as near as that a boat heels by a degree or two.
  private static final double MASS = 8;
  private static final double ALONG = 0.08;
  private static final double ACROSS = 0.02;
  private static final double UP = 0.08;

  private final Map<Load, Balance> byLoad = new ConcurrentHashMap<>();
  private final Map<Load, Balance> byKind = new ConcurrentHashMap<>();
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
   * The balances of a boat lifted by the same and loaded nearly the same; without any, those of the
   * boat as measured.
   */
  Stream<Balance> near(LiftKey boat, FloatingBody floating) {
    if (!isPlain(floating)) {
      return Stream.empty();
    }
    List<Balance> own = Stream.concat(known(boat, floating), asMeasured(boat, floating)).toList();
    return own.isEmpty()
        ? measured.map(m -> m.byKind.get(Load.of(boat.kind(), floating))).stream()
        : own.stream();
  }

  private Stream<Balance> known(LiftKey boat, FloatingBody floating) {
    return Stream.of(byLift.get(floating.lifts()), byLoad.get(Load.of(boat.solids(), floating)))
        .filter(Objects::nonNull);
  }

  private Stream<Balance> asMeasured(LiftKey boat, FloatingBody floating) {
    return measured.stream().flatMap(m -> m.known(boat, floating));
  }

  void keep(LiftKey boat, FloatingBody floating, ImmersedPart part) {
    if (!isPlain(floating)) {
      return;
    }
    Balance balance = new Balance(floating, part);
    if (byLoad.size() < MOST) {
      byLoad.putIfAbsent(Load.of(boat.solids(), floating), balance);
      byKind.putIfAbsent(Load.of(boat.kind(), floating), balance);
    }
    if (byLift.size() < MOST) {
      byLift.put(floating.lifts(), balance);
    }
  }
}
