package thwartwise.afloat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import thwartwise.boat.Side;
import thwartwise.geometry.WaterPlane;

/**
 * A cache of equilibria, righting curves and swings, for loads that occur again. Thread-safe and
 * bounded.
 */
public final class BalanceCache {
  private static final int MOST = 60_000;

  /** Each curve has a point for every degree. */
  private static final int MOST_CURVES = 1_000;

  /** Each surface holds the solids that were cut for it. */
  private static final int MOST_SURFACES = 1_000;

  private final Map<FloatingCase, Equilibria> fromUpright = new ConcurrentHashMap<>();
  private final Map<FloatingCase, Equilibria> wholeFromUpright = new ConcurrentHashMap<>();
  private final Map<FloatingCase, Equilibria> fromNear = new ConcurrentHashMap<>();
  private final BoundedCache<FloatingCase, LooseWater> looseWater;
  private final BoundedCache<FloatingCase, Equilibria> underForces;
  private final BoundedCache<HeelCase, Optional<RightingCurve>> curves;
  private final BoundedCache<HeelCase, Optional<DynamicHeel>> swings;
  private final BoundedCache<FloatingCase, CapsizedBoat> capsized;
  private final NearBalances balances;
  private final Map<Class<?>, Object> others = new ConcurrentHashMap<>();
  private final Map<Object, Object> searches = new ConcurrentHashMap<>();
  private final Optional<BalanceCache> measured;

  public BalanceCache() {
    this(Optional.empty());
  }

  private BalanceCache(Optional<BalanceCache> measured) {
    this.measured = measured;
    this.looseWater = new BoundedCache<>(MOST_SURFACES, measured.map(m -> m.looseWater));
    this.underForces = new BoundedCache<>(MOST, measured.map(m -> m.underForces));
    this.curves = new BoundedCache<>(MOST_CURVES, measured.map(m -> m.curves));
    this.swings = new BoundedCache<>(MOST, measured.map(m -> m.swings));
    this.capsized = new BoundedCache<>(MOST, measured.map(m -> m.capsized));
    this.balances = new NearBalances(measured.map(m -> m.balances));
  }

  /**
   * An empty cache for the same boat with a measurement moved by its spread. Long searches begin
   * where they ended for the measured boat, and what the move does not affect is not searched
   * again. The cache of the measured boat must not be used at the same time, or answers would
   * depend on which comes first.
   */
  public BalanceCache moved() {
    return new BalanceCache(Optional.of(this));
  }

  /** Whether it is for a boat with a measurement moved, of which only figures count. */
  public boolean isOfMovedBoat() {
    return measured.isPresent();
  }

  /**
   * A search that may begin where the same one ended for the measured boat.
   *
   * @param asked equal only for the same search with other measurements
   * @param from searches from where it ended then, if it was made then
   */
  public <T> T search(Object asked, Class<T> type, Function<Optional<T>, T> from) {
    Optional<T> start = measured.map(m -> m.searches.get(asked)).map(type::cast);
    T found = from.apply(start);
    if (searches.size() < MOST) {
      searches.put(asked, found);
    }
    return found;
  }

  /**
   * The equilibria of a boat, searched from a balance of nearly the same load where there is one.
   * What was found before for the same load, or for its mirror image, is not searched again.
   *
   * @param afloat equal only for what floats alike and is over alike
   * @param floating the body to compute with, made only if needed
   * @param over when a boat has gone over for good
   * @param whole whether every pose is needed, or no more than {@link Equilibrium#until} gives
   * @param beganNear set if the result was found from such a balance
   */
  public Equilibria rest(
      FloatingCase afloat,
      Supplier<FloatingBody> floating,
      Predicate<WaterPlane> over,
      boolean whole,
      AtomicBoolean beganNear) {
    Optional<Equilibria> before = remembered(c -> c.fromUpright(whole), afloat);
    if (before.isPresent()) {
      return before.get();
    }
    Optional<Equilibria> near =
        remembered(c -> c.fromNear, afloat).or(() -> near(afloat, floating.get(), over));
    if (near.isPresent()) {
      beganNear.set(true);
      return near.get();
    }
    return letGoUpright(afloat, floating, over, whole);
  }

  private Optional<Equilibria> near(
      FloatingCase afloat, FloatingBody now, Predicate<WaterPlane> over) {
    return Equilibrium.nextTo(balances, now, over, afloat.boat())
        .map(pose -> new Equilibria(List.of(pose), Equilibria.Ending.RESTS))
        .map(found -> kept(fromNear, afloat, found));
  }

  /** The equilibria of the same boat released upright. */
  public Equilibria letGoUpright(
      FloatingCase afloat,
      Supplier<FloatingBody> floating,
      Predicate<WaterPlane> over,
      boolean whole) {
    Map<FloatingCase, Equilibria> rests = fromUpright(whole);
    return remembered(c -> c.fromUpright(whole), afloat)
        .orElseGet(
            () ->
                kept(
                    rests,
                    afloat,
                    Equilibrium.keeping(floating.get(), over, whole, afloat.boat(), balances)));
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

  private Optional<Equilibria> remembered(
      Function<BalanceCache, Map<FloatingCase, Equilibria>> rests, FloatingCase afloat) {
    return remembered(rests.apply(this), afloat)
        .or(() -> measured.flatMap(m -> m.remembered(rests, afloat)));
  }

  private static Equilibria kept(
      Map<FloatingCase, Equilibria> rests, FloatingCase afloat, Equilibria found) {
    if (rests.size() < MOST) {
      rests.put(afloat, found);
    }
    return found;
  }

  /**
   * What loose water can fill, cut once for the same boat with the same load.
   *
   * @param loaded equal only where the boat and the people in it are the same
   */
  public LooseWater looseWater(FloatingCase loaded, Supplier<LooseWater> cut) {
    return looseWater.of(loaded, cut);
  }

  /**
   * A boat heeled to one side from where it floats.
   *
   * @param edges by how much they are lowered, m
   * @param from the heel it begins at, rad
   * @param nearly whether no more is needed than {@link DynamicHeel#nearly} gives
   */
  private record HeelCase(
      FloatingCase afloat, Side side, double edges, double from, boolean nearly) {}

  /** The equilibria under forces that the case names. */
  public Equilibria underForces(FloatingCase afloat, Supplier<Equilibria> rest) {
    return underForces.of(afloat, rest);
  }

  /**
   * A righting curve. That of a boat with a measurement moved may be the mirror image of the one
   * toward the other side, with the name of that side's edge, which nothing shows.
   *
   * @param edges by how much they are lowered, m
   */
  public Optional<RightingCurve> curve(
      FloatingCase afloat, Side side, double edges, Supplier<Optional<RightingCurve>> curve) {
    Optional<HeelCase> mirrored =
        isOfMovedBoat()
            ? afloat.mirrored().map(other -> new HeelCase(other, side.other(), edges, 0, false))
            : Optional.empty();
    return curves.of(
        new HeelCase(afloat, side, edges, 0, false),
        () ->
            mirrored
                .flatMap(curves::known)
                .map(found -> found.map(RightingCurve::mirrored))
                .orElseGet(curve));
  }

  /**
   * @param edges by how much they are lowered, m
   * @param from heel toward the side at the moment of the move, rad
   * @param nearly whether it is found by {@link DynamicHeel#nearly}
   */
  public Optional<DynamicHeel> swing(
      FloatingCase afloat,
      Side side,
      double edges,
      double from,
      boolean nearly,
      Supplier<Optional<DynamicHeel>> swing) {
    return swings.of(new HeelCase(afloat, side, edges, from, nearly), swing);
  }

  /** Values that other classes cache for boats of the same hull, one of each type. */
  public <T> T other(Class<T> type, Supplier<T> empty) {
    return type.cast(others.computeIfAbsent(type, t -> empty.get()));
  }

  /** The effort to turn a swamped boat back. */
  public CapsizedBoat capsized(FloatingCase swamped, Supplier<CapsizedBoat> turned) {
    return capsized.of(swamped, turned);
  }

  /**
   * Answers by what decides them, up to a number. Thread-safe: two threads at once may both compute
   * an answer, and neither waits for the other.
   */
  private static final class BoundedCache<K, V> {
    private final int most;
    private final Optional<BoundedCache<K, V>> measured;
    private final Map<K, V> answers = new ConcurrentHashMap<>();

    BoundedCache(int most, Optional<BoundedCache<K, V>> measured) {
      this.most = most;
      this.measured = measured;
    }

    V of(K key, Supplier<V> answer) {
      Optional<V> before = known(key);
      if (before.isPresent()) {
        return before.get();
      }
      V now = answer.get();
      if (answers.size() < most) {
        answers.put(key, now);
      }
      return now;
    }

    Optional<V> known(K key) {
      return Optional.ofNullable(answers.get(key)).or(() -> measured.map(m -> m.answers.get(key)));
    }
  }
}
