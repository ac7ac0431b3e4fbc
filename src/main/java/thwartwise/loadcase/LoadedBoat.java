package thwartwise.loadcase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import thwartwise.afloat.BalanceCache;
import thwartwise.afloat.Bay;
import thwartwise.afloat.CapsizedBoat;
import thwartwise.afloat.DynamicHeel;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.EquilibriumUnderForces;
import thwartwise.afloat.FloatingBody;
import thwartwise.afloat.FloatingCase;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.LiftKey;
import thwartwise.afloat.LooseWater;
import thwartwise.afloat.Pool;
import thwartwise.afloat.RightingCurve;
import thwartwise.afloat.Swamping;
import thwartwise.afloat.WaterLimits;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Side;
import thwartwise.boat.Space;
import thwartwise.geometry.Box;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.measure.UnitFormat;

/**
 * An immutable loaded boat for the checks, with its allowance. Its swamped buoyancy and its
 * equilibria are computed once and cached, since many checks need them.
 */
public final class LoadedBoat {
  /**
   * Cosine of 60 degrees from upright: every limit on heel is far below, and a boat that has heeled
   * so far does not count as coming back.
   */
  private static final double OVER = 0.5;

  private static final double NANOMETRE = 1e-9;

  /**
   * Nearer to the middle line the weights may balance a boat that is not stable upright
   * (judgement), m.
   */
  private static final double KNIFES_EDGE = 0.001;

  private final BoatModel model;
  private final LoadCase base;
  private final Disturbance done;
  private final Allowance allowance;
  private final boolean hurried;
  private final Optional<BalanceCache> known;
  private final boolean letGoUpright;

  /**
   * Whether an equilibrium of this boat, or of a changed one made from it, was found from a cached
   * balance.
   */
  private final AtomicBoolean beganNear;

  private LoadedBoat fromUpright;
  private Loading loading;
  private FloatingCase caseAfloat;
  private Swamping swamping;

  /** The side to which loose kit slides in the other variant of this loading; 0 without one. */
  private double slidTo;

  private Equilibria rest;

  /**
   * Equilibria without loose kit, by the chambers lost; they do not depend on where the kit was.
   */
  private Map<Collection<Space>, Equilibria> withoutKit = new HashMap<>();

  private LoadedBoat(
      BoatModel model,
      LoadCase base,
      Disturbance done,
      Allowance allowance,
      boolean hurried,
      Optional<BalanceCache> known,
      boolean letGoUpright,
      AtomicBoolean beganNear) {
    this.model = model;
    this.base = base;
    this.done = done;
    this.allowance = allowance;
    this.hurried = hurried;
    this.known = known;
    this.letGoUpright = letGoUpright;
    this.beganNear = beganNear;
  }

  private LoadedBoat(
      BoatModel model,
      LoadCase base,
      Disturbance done,
      Allowance allowance,
      boolean hurried,
      Optional<BalanceCache> known,
      boolean letGoUpright) {
    this(model, base, done, allowance, hurried, known, letGoUpright, new AtomicBoolean());
  }

  private LoadedBoat with(Disturbance otherwise) {
    return new LoadedBoat(
        model, base, otherwise, allowance, hurried, known, letGoUpright, beganNear);
  }

  /** As measured, without allowance, for a loading that no page names. */
  public static LoadedBoat of(BoatModel model, List<Body> people) {
    return of(model, people, LoadCase.UNNAMED);
  }

  /** As measured, without allowance. */
  public static LoadedBoat of(BoatModel model, List<Body> people, LoadCase loadCase) {
    return new LoadedBoat(
        model, loadCase, Disturbance.none(people), Allowance.NONE, false, Optional.empty(), false);
  }

  public LoadedBoat under(Allowance newAllowance) {
    return new LoadedBoat(model, base, done, newAllowance, hurried, known, letGoUpright);
  }

  /**
   * The same boat, asked only whether it meets: the search stops at the first pose that no check
   * which limits crew can meet (unstable, or past 60 degrees and flooded). A limit not met then is
   * never met; the figure itself has no meaning.
   */
  public LoadedBoat hurried() {
    return new LoadedBoat(model, base, done, allowance, true, Optional.empty(), false);
  }

  /**
   * The same, with searches that begin at cached balances of this boat and add to the cache. Only
   * an answer {@link #fromUpright} may refuse a crew.
   */
  public LoadedBoat hurried(BalanceCache known) {
    return new LoadedBoat(model, base, done, allowance, true, Optional.of(known), false);
  }

  /** The same boat, not hurried, with the cache of a hurried one. */
  public LoadedBoat remembering(BalanceCache known) {
    return new LoadedBoat(model, base, done, allowance, hurried, Optional.of(known), false);
  }

  /**
   * Whether an equilibrium of this boat was found from a cached balance, so that a crew must not be
   * refused by it. One with a measurement moved is one of many whose share decides: refused for
   * nothing, it can only lower an answer.
   */
  public boolean mustBeConfirmed() {
    return beganNear.get() && !isOfMovedBoat();
  }

  private boolean isOfMovedBoat() {
    return known.filter(BalanceCache::isOfMovedBoat).isPresent();
  }

  /** The same, with every search begun upright. */
  public LoadedBoat fromUpright() {
    if (fromUpright == null) {
      fromUpright = new LoadedBoat(model, base, done, allowance, hurried, known, true);
    }
    return fromUpright;
  }

  public LoadedBoat with(Loading.Weight weight) {
    return with(done.and(weight));
  }

  /** Everyone aboard leaning with the boat, as in a righting curve and in a sudden move. */
  public LoadedBoat stiff() {
    Disturbance stiff = done.withPeople(people().stream().map(Body::stiff).toList());
    return with(stiff);
  }

  public LoadedBoat after(Disturbance next) {
    return with(done.andThen(next));
  }

  /**
   * After a change toward one side, with loose kit slid to that side. An asymmetric boat may heel
   * to the other side: there the kit is also tried where it is listed.
   *
   * @param side 1 port, −1 starboard
   */
  public List<LoadedBoat> toSide(Disturbance next, double side) {
    if (model.looseKit().isEmpty()) {
      return List.of(after(next));
    }
    List<LoadCaseStep> deeds = next.deeds().stream().map(LoadCaseStep::withKitSlid).toList();
    LoadedBoat slid = after(next.called(deeds).withKitAt(side));
    if (isSymmetric()) {
      return List.of(slid);
    }
    LoadedBoat listed = after(next);
    listed.withoutKit = slid.withoutKit;
    listed.slidTo = side;
    return List.of(slid, listed);
  }

  /**
   * Whether afloat this is no worse than the same loading with loose kit slid to the side of the
   * change. This holds where hull and edges are symmetric and the common centre of all weights,
   * with the kit where it is listed, is on that side: the boat heels that way, and farther once the
   * kit has slid, at the same height and position along. Water in a chamber is assumed to run to
   * the other side.
   */
  public boolean isOutdoneAfloat() {
    if (slidTo == 0
        || !isOnlyTheWorstAsked()
        || !model.isAlikeAfloat()
        || !done.forces().isEmpty()) {
      return false;
    }
    FloatingBody floating = afloat();
    double moment = slidTo * floating.mass() * floating.centre().y();
    for (Pool pool : floating.pools()) {
      moment -= floating.density() * pool.volume() * pool.farthest(-slidTo);
    }
    return moment >= 0;
  }

  /** Whether no page shows which of several loadings is the worst one. */
  private boolean isOnlyTheWorstAsked() {
    return hurried || isOfMovedBoat();
  }

  /**
   * Whether swamped this is no worse than the same loading with loose kit slid to the side of the
   * change. This holds where all that lifts, apart from the people, is alike on both sides, and the
   * weights turn the boat to that side against all that the people can lift there: the boat heels
   * that way, and farther once the kit has slid, at the same height and position along.
   *
   * @param before the same people before they moved across the boat
   */
  public boolean isOutdoneSwamped(LoadedBoat before) {
    if (slidTo == 0
        || !isOnlyTheWorstAsked()
        || !model.isAlikeSwamped()
        || !done.forces().isEmpty()
        || !done.pools().isEmpty()) {
      return false;
    }
    Equilibria level = before.swampedRest(List.of());
    Loading loading = loading();
    double moment = loading.mass() * (slidTo * loading.centre().y() - KNIFES_EDGE);
    return level.allUpright() && moment >= LiftOfPeople.momentToSide(slidTo, loading, level);
  }

  /**
   * A key that is equal for loadings that differ afloat only in {@link #offTheMiddle}, or are
   * mirror images of such; empty where more than that may decide the heel.
   */
  Optional<Object> afloatButForHeel() {
    if (!model.isAlikeAfloat() || !done.forces().isEmpty()) {
      return Optional.empty();
    }
    FloatingCase dry = caseAfloat();
    return waterOnEitherSide().map(water -> List.of(dry.mass(), dry.x(), dry.z(), water));
  }

  private Optional<Object> waterOnEitherSide() {
    return done.pools().stream().allMatch(Pool::isAboutTheMiddle)
        ? Optional.of(done.pools())
        : waterToOneSide().map(WaterToOneSide::onEitherSide);
  }

  private Optional<WaterToOneSide> waterToOneSide() {
    return WaterToOneSide.of(done.pools(), model.spaces());
  }

  /**
   * Distance of the common centre of all weights from the middle line, without loose water, m;
   * where that is to one side, the distance toward that side. To a nanometre, because that of a
   * mirror image is summed in another order.
   */
  double offTheMiddle() {
    double y = loading().centre().y();
    double off = waterToOneSide().map(water -> water.side() * y).orElse(Math.abs(y));
    return Math.rint(off / NANOMETRE) * NANOMETRE;
  }

  /** This boat, named as another loading with a change. */
  public LoadedBoat called(LoadCaseStep deed, LoadedBoat before) {
    return with(done.called(before.done.andThen(done.called(List.of(deed))).deeds()));
  }

  /** The same boat once everything that is not fastened down or shut away has floated off. */
  private LoadedBoat withoutLooseKit() {
    Disturbance gone = done.withKitAt(0);
    for (Kit kit : model.looseKit()) {
      gone = gone.and(new Loading.Weight(-kit.mass(), kit.at()));
    }
    return with(gone);
  }

  /** The units of the boat's papers. */
  public UnitFormat units() {
    return new UnitFormat(model.boat().units());
  }

  public BoatModel model() {
    return model;
  }

  public List<Body> people() {
    return done.people();
  }

  public Allowance allowance() {
    return allowance;
  }

  public LoadCase loadCase() {
    return base.with(done.deeds());
  }

  /**
   * Whether everything except the people, and the places they can reach, is symmetric; water in a
   * chamber is ignored.
   */
  boolean isSymmetric() {
    return model.isSymmetric()
        && done.pools().isEmpty()
        && done.weights().stream().allMatch(w -> w.at().y() == 0)
        && people().stream().allMatch(Body::isAboutTheMiddle);
  }

  /** Whether the people are symmetric as well, so that a move to one side answers for both. */
  public boolean isAlikeOnBothSides() {
    return isSymmetric() && people().stream().allMatch(this::hasTwin);
  }

  private boolean hasTwin(Body body) {
    return people().stream()
        .anyMatch(
            o ->
                o.mass() == body.mass()
                    && o.x() == body.x()
                    && o.seat() == body.seat()
                    && Math.abs(o.y() + body.y()) < 1e-12);
  }

  public Loading loading() {
    if (loading == null) {
      List<Loading.Weight> weights = weights();
      double others =
          people().stream().mapToDouble(Body::mass).sum()
              + weights.stream().mapToDouble(Loading.Weight::mass).sum();
      loading = new Loading(model, people(), weights, allowance.massFactor(model.boat(), others));
    }
    return loading;
  }

  private List<Loading.Weight> weights() {
    if (done.kitSide() == 0) {
      return done.weights();
    }
    List<Loading.Weight> weights = new ArrayList<>(done.weights());
    for (Kit kit : model.looseKit()) {
      weights.add(new Loading.Weight(-kit.mass(), kit.at()));
      weights.add(new Loading.Weight(kit.mass(), model.slid(kit, done.kitSide())));
    }
    return weights;
  }

  /** The boat dry inside except for water in its chambers, without forces. */
  public FloatingBody afloat() {
    FloatingBody dry = FloatingBody.dry(loading());
    return new FloatingBody(
        dry.mass(), dry.centre(), dry.lifts(), dry.density(), done.pools(), dry.couples());
  }

  public Equilibria atRest() {
    if (rest == null) {
      rest =
          done.forces().isEmpty()
              ? dryRest()
              : known
                  .map(k -> k.underForces(caseAfloat().with(done.forces()), this::restUnderForces))
                  .orElseGet(this::restUnderForces);
    }
    return rest;
  }

  private Equilibria dryRest() {
    Predicate<WaterPlane> over = this::hasFlooded;
    return known.isEmpty()
        ? found(afloat(), over)
        : found(known.get(), caseAfloat(), this::afloat, over);
  }

  private FloatingCase caseAfloat() {
    if (caseAfloat == null) {
      caseAfloat = FloatingCase.dry(model, loading()).with(done.pools());
    }
    return caseAfloat;
  }

  private Equilibria restUnderForces() {
    FloatingBody floating = afloat();
    Supplier<Equilibria> computed = () -> Equilibrium.from(floating);
    Equilibria unforced = known.map(k -> k.underForces(caseAfloat(), computed)).orElseGet(computed);
    return EquilibriumUnderForces.of(floating, done.forces(), model.form().outside(), unforced)
        .rest();
  }

  /** Righting arms toward one side, with the edges as the allowance leaves them. */
  public Optional<RightingCurve> rightingCurve(Side side) {
    Supplier<Optional<RightingCurve>> computed =
        () -> RightingCurve.toward(side, afloat(), edges());
    return known
        .map(k -> k.curve(caseAfloat(), side, allowance.freeboardLoss(), computed))
        .orElseGet(computed);
  }

  /**
   * How far it swings from a heel at which its load has just moved; for a hurried boat only whether
   * it swings back before it floods.
   */
  public Optional<DynamicHeel> swing(double from, Side side) {
    Supplier<Optional<DynamicHeel>> computed =
        () ->
            hurried
                ? DynamicHeel.nearly(afloat(), from, side, edges())
                : DynamicHeel.of(afloat(), from, side, edges());
    return known
        .map(k -> k.swing(caseAfloat(), side, allowance.freeboardLoss(), from, hurried, computed))
        .orElseGet(computed);
  }

  /** The effort to turn it back from upside down, open to the sea, as it is loaded. */
  public CapsizedBoat capsized() {
    Supplier<CapsizedBoat> computed = () -> CapsizedBoat.of(swamped(List.of()));
    return known.map(k -> k.capsized(caseSwamped(List.of(), true), computed)).orElseGet(computed);
  }

  private FloatingCase caseSwamped(Collection<Space> lost, boolean withLooseKit) {
    List<Box> without = lost.stream().map(Space::box).toList();
    List<String> lostNames = lost.stream().map(Space::name).toList();
    LiftKey boat =
        new LiftKey(
            List.of(model.swampedKey(), without, allowance.volumeFactor(), withLooseKit),
            List.of(lostNames, allowance.volumeFactor(), withLooseKit));
    boolean alike = model.isAlikeSwamped() && lost.isEmpty();
    return FloatingCase.swamped(boat, alike, loading());
  }

  /** With loose kit, or once it is gone. */
  private Equilibria swampedRest(Collection<Space> lost, boolean withLooseKit) {
    if (known.isEmpty()) {
      return found(swamped(lost), LoadedBoat::isOver);
    }
    FloatingCase afloat = caseSwamped(lost, withLooseKit);
    return found(known.get(), afloat, () -> swamped(lost), LoadedBoat::isOver);
  }

  private Equilibria found(FloatingBody floating, Predicate<WaterPlane> over) {
    return hurried ? Equilibrium.until(floating, over) : Equilibrium.from(floating);
  }

  private Equilibria found(
      BalanceCache balances,
      FloatingCase afloat,
      Supplier<FloatingBody> floating,
      Predicate<WaterPlane> over) {
    return letGoUpright
        ? balances.letGoUpright(afloat, floating, over, !hurried)
        : balances.rest(afloat, floating, over, !hurried, beganNear);
  }

  private boolean hasFlooded(WaterPlane plane) {
    return isOver(plane) && Freeboard.least(model.edges(), plane).height() < 0;
  }

  private static boolean isOver(WaterPlane plane) {
    return plane.up().z() < OVER;
  }

  public LooseWater looseWater() {
    Loading loading = loading();
    return known
        .map(
            balances ->
                balances.looseWater(
                    FloatingCase.swamped(new LiftKey(model, model), false, loading),
                    () -> LooseWater.of(loading)))
        .orElseGet(() -> LooseWater.of(loading));
  }

  /**
   * The volume of loose water it stands in one bay, m³; for a hurried boat only whether it is at
   * least {@code enough}.
   */
  public WaterLimits waterLimits(Bay bay, double enough) {
    double asked = hurried ? enough : Double.POSITIVE_INFINITY;
    return looseWater().limits(bay, edges(), asked, isOfMovedBoat());
  }

  /**
   * A search that may begin where it ended for the boat as measured, where this is one with a
   * measurement moved.
   *
   * @param asked what is looked for, of boats with people in the same places after the same
   */
  <T> T search(Object asked, Class<T> type, Function<Optional<T>, T> from) {
    return known
        .map(k -> k.search(List.of(loadCase(), places(), asked), type, from))
        .orElseGet(() -> from.apply(Optional.empty()));
  }

  private List<String> places() {
    return people().stream().map(Body::place).toList();
  }

  /** Rail and openings, each lowered by the allowance. */
  public List<FloodPoint> edges() {
    if (allowance.freeboardLoss() == 0) {
      return model.edges();
    }
    Vector3 lower = Vector3.of(0, 0, -allowance.freeboardLoss());
    return model.edges().stream().map(e -> new FloodPoint(e.name(), e.at().plus(lower))).toList();
  }

  /** The boat open to the sea, everyone seated, with some chambers filled. */
  public FloatingBody swamped(Collection<Space> lost) {
    if (swamping == null) {
      swamping = Swamping.of(loading(), allowance.volumeFactor());
    }
    return swamping.floating(lost);
  }

  /**
   * The equilibria of the swamped boat, with loose kit still in it and with loose kit gone, because
   * either may be worse.
   */
  public Equilibria swampedRest(Collection<Space> lost) {
    Equilibria kept = swampedRest(lost, true);
    if (model.looseKit().isEmpty() || hurried && !kept.allUpright()) {
      return kept;
    }
    Equilibria gone =
        withoutKit.computeIfAbsent(lost, l -> withoutLooseKit().swampedRest(l, false));
    return Equilibria.of(List.of(kept, gone));
  }

  public boolean isHurried() {
    return hurried;
  }

  /**
   * Water density times the fully immersed volume of everything that lifts, minus all mass aboard,
   * kg.
   */
  public double spareBuoyancy(Collection<Space> lost) {
    FloatingBody floating = swamped(lost);
    return floating.density() * floating.liftVolume() - floating.mass();
  }

  /** The chambers that count. */
  public List<Space> counted() {
    return model.spaces().stream().filter(s -> s.counting().share() > 0).toList();
  }

  /** The boat with nobody in it. */
  public LoadedBoat empty(Act act) {
    return after(Disturbance.moved(LoadCaseStep.of(act), List.of()));
  }
}
