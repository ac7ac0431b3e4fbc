package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Space;
import thwartwise.geometry.Box;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.hull.FloodPoint;

/**
 * A boat with loose water inside. The water can fill the inside of the hull except the chambers
 * that count, fastened kit and the people's legs. Chambers that are not proven are assumed to let
 * it in.
 */
public final class LooseWater {
  private static final double NEGLIGIBLE = 1e-7;

  private final Loading loading;
  private final BoatModel model;
  private final List<Box> standing = new ArrayList<>();
  private final Map<Bay, List<Lift>> holds = new ConcurrentHashMap<>();
  private final Map<LimitsAsked, WaterLimits> limits = new ConcurrentHashMap<>();

  private record LimitsAsked(Bay bay, List<FloodPoint> edges, double enough) {}

  private LooseWater(Loading loading) {
    this.loading = loading;
    this.model = loading.model();
  }

  public static LooseWater of(Loading loading) {
    LooseWater water = new LooseWater(loading);
    DisjointBoxes boxes = new DisjointBoxes();
    for (Kit item : loading.model().boat().kit()) {
      if (item.fastened()) {
        item.volume().map(v -> Box.cube(item.at(), v)).map(boxes::place).ifPresent(water::stand);
      }
    }
    for (Body body : loading.people()) {
      loading.model().boxes(body.withMass(body.mass() * loading.massFactor())).stream()
          .map(boxes::place)
          .forEach(water::stand);
    }
    return water;
  }

  private void stand(List<Box> boxes) {
    standing.addAll(boxes);
  }

  /** The boat with a volume of it, m³, in one part of it. */
  public FloatingBody in(Bay bay, double volume) {
    FloatingBody dry = FloatingBody.dry(loading);
    return volume > 0 ? dry.with(new Pool(hold(bay), volume)) : dry;
  }

  /** The capacity of that part up to its lid, m³. */
  public double capacity(Bay bay) {
    return Lift.volume(hold(bay));
  }

  /**
   * The volume that the boat stands, computed once.
   *
   * @param enough a volume at or above this is reported as this, m³
   * @param roughly whether it is for a boat with a measurement moved, of which fillings that are
   *     harmless need only be nearly known
   */
  public WaterLimits limits(Bay bay, List<FloodPoint> edges, double enough, boolean roughly) {
    return limits.computeIfAbsent(
        new LimitsAsked(bay, edges, enough),
        a -> WaterLimitsSearch.of(enough, this, bay, edges, roughly));
  }

  /**
   * The height of the water inside above a point, m; empty when there is none or it does not fit.
   */
  public OptionalDouble depthOver(Vector3 point, Vector3 up, Bay bay, double volume) {
    if (!(volume > 0)) {
      return OptionalDouble.empty();
    }
    return new Pool(hold(bay), volume)
        .lies(up, new Immersion())
        .map(part -> OptionalDouble.of(-part.plane().above(point)))
        .orElse(OptionalDouble.empty());
  }

  /** The bounds of the water, cut once for every filling. */
  public List<Lift> hold(Bay bay) {
    return holds.computeIfAbsent(bay, this::cut);
  }

  private List<Lift> cut(Bay bay) {
    List<Lift> hold = new ArrayList<>();
    Solid inside = model.form().inside().within(bay.box());
    add(inside, 1, hold);
    for (Space space : model.spaces()) {
      add(space.solid().within(bay.box()), -space.counting().share(), hold);
    }
    for (Box box : standing) {
      add(inside.within(box), -1, hold);
      for (Space space : model.spaces()) {
        if (space.counting().share() > 0 && space.box().overlaps(box)) {
          Solid common = space.solid().within(box).within(bay.box());
          add(common, space.counting().share(), hold);
        }
      }
    }
    return hold;
  }

  private static void add(Solid solid, double share, List<Lift> hold) {
    if (solid.volume() > NEGLIGIBLE && share != 0) {
      hold.add(new Lift(solid, share));
    }
  }

  /** The volume that can be filled up to the level of the sea, m³. */
  public static double filledVolume(LooseWater water, Bay bay, Pose pose) {
    return Lift.immersed(water.hold(bay), pose.plane(), new Immersion()).volume();
  }
}
