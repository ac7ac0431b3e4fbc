package thwartwise.afloat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.WaterPlane;

/**
 * Rests already found, for loads that come again, and balances, for searches that begin at one of
 * them instead of upright. Safe among threads, and bounded.
 *
 * <p>Only such balances are begun at as were reached from upright down a single bowl: the stiffness
 * was well above zero at every step of the way and no nudge led elsewhere. A boat loaded nearly the
 * same lies in nearly the same bowl, and a bowl has one bottom. So what is kept here changes how
 * soon a rest is found and never which one. Loose water and forces take no part.
 */
public final class KnownBalances {
  private static final int MOST = 60_000;

  // kg and m: between loads as near as that a boat heels by a degree or two.
  private static final double MASS = 8;
  private static final double ALONG = 0.08;
  private static final double ACROSS = 0.02;
  private static final double UP = 0.08;

  private final Map<FloatingCase, Equilibria> fromUpright = new ConcurrentHashMap<>();
  private final Map<FloatingCase, Equilibria> wholeFromUpright = new ConcurrentHashMap<>();
  private final Map<FloatingCase, Equilibria> fromNear = new ConcurrentHashMap<>();
  private final Map<FloatingCase, LooseWater> looseWater = new ConcurrentHashMap<>();
  private final Map<Load, Balance> byLoad = new ConcurrentHashMap<>();
  private final Map<List<Lift>, Balance> byLift = new ConcurrentHashMap<>();

  /**
   * A balance and what was afloat in it.
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

  /**
   * Where a boat comes to rest, begun at a balance of nearly the same load where there is one. What
   * was found before of the same load, or of its mirror image, is not looked for again.
   *
   * @param afloat equal only for what floats alike and is over alike
   * @param floating the same to be worked with, made where it is needed
   * @param over how a boat lies that has gone over for good
   * @param whole whether every pose is told, or no more than {@link Equilibrium#until} tells
   * @param beganNear set where it was found from such a balance
   */
  public Equilibria rest(
      FloatingCase afloat,
      Supplier<FloatingBody> floating,
      Predicate<WaterPlane> over,
      boolean whole,
      AtomicBoolean beganNear) {
    Optional<Equilibria> before = remembered(fromUpright(whole), afloat);
    if (before.isPresent()) {
      return before.get();
    }
    Optional<Equilibria> near =
        remembered(fromNear, afloat).or(() -> near(afloat, floating.get(), over));
    if (near.isPresent()) {
      beganNear.set(true);
      return near.get();
    }
    return letGoUpright(afloat, floating, over, whole);
  }

  private Optional<Equilibria> near(
      FloatingCase afloat, FloatingBody now, Predicate<WaterPlane> over) {
    return Equilibrium.nextTo(this, now, over, afloat.boat())
        .map(pose -> new Equilibria(List.of(pose), Equilibria.Ending.RESTS))
        .map(found -> kept(fromNear, afloat, found));
  }

  /** The same of the boat let go upright. */
  public Equilibria letGoUpright(
      FloatingCase afloat,
      Supplier<FloatingBody> floating,
      Predicate<WaterPlane> over,
      boolean whole) {
    Map<FloatingCase, Equilibria> rests = fromUpright(whole);
    return remembered(rests, afloat)
        .orElseGet(
            () ->
                kept(
                    rests,
                    afloat,
                    Equilibrium.keeping(floating.get(), over, whole, afloat.boat(), this)));
  }

  private Map<FloatingCase, Equilibria> fromUpright(boolean whole) {
    return whole ? wholeFromUpright : fromUpright;
  }

  private static Optional<Equilibria> remembered(
      Map<FloatingCase, Equilibria> rests, FloatingCase afloat) {
    Equilibria before = rests.get(afloat);
    return before != null
        ? Optional.of(before)
        : afloat.mirrored().map(rests::get).map(Equilibria::mirrored);
  }

  private static Equilibria kept(
      Map<FloatingCase, Equilibria> rests, FloatingCase afloat, Equilibria found) {
    if (rests.size() < MOST) {
      rests.put(afloat, found);
    }
    return found;
  }

  /**
   * What loose water can fill, cut once for all who ask of the same boat so loaded.
   *
   * @param loaded equal only where the boat and the people in it are the same
   */
  public LooseWater looseWater(FloatingCase loaded, Supplier<LooseWater> cut) {
    return looseWater.computeIfAbsent(loaded, l -> cut.get());
  }

  private static boolean isPlain(FloatingBody floating) {
    return floating.pools().isEmpty() && floating.couples().isEmpty();
  }

  /**
   * Of a boat that is lifted by the same, and of one loaded nearly the same.
   *
   * @param boat which boat it is: equal only where all that lifts it is the same but for its people
   */
  Stream<Balance> near(Object boat, FloatingBody floating) {
    if (!isPlain(floating)) {
      return Stream.empty();
    }
    return Stream.of(byLift.get(floating.lifts()), byLoad.get(Load.of(boat, floating)))
        .filter(Objects::nonNull);
  }

  void keep(Object boat, FloatingBody floating, ImmersedPart part) {
    if (!isPlain(floating)) {
      return;
    }
    Balance balance = new Balance(floating, part);
    if (byLoad.size() < MOST) {
      byLoad.putIfAbsent(Load.of(boat, floating), balance);
    }
    if (byLift.size() < MOST) {
      byLift.put(floating.lifts(), balance);
    }
  }
}
