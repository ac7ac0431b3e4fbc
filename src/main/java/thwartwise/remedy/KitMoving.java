package thwartwise.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.geometry.Box;
import thwartwise.geometry.Vector3;
import thwartwise.remedy.Change.Effort;

/** Another place on the floor for heavy things: on the middle line, under or next to each place. */
final class KitMoving {
  /** Lighter things are not worth the trouble, kg. */
  static final double HEAVY = 5;

  private static final List<String> STANDS_WHERE_IT_MUST = List.of("rudder", "mast");

  /** The distance from under a place to just before or behind it, m. */
  private static final double BESIDE = 0.30;

  /** The assumed volume of a thing without one, m³. */
  private static final double UNKNOWN_SIZE = 0.008;

  /** The distance kept free between two things, m. */
  private static final double CLEAR = 0.02;

  /** The greatest height above the floor, m, because the bottom rises toward the ends. */
  private static final double HIGHEST = 0.15;

  private static final double STEP = 0.01;

  private KitMoving() {}

  private record Spot(Deed.Near near, String place, double x) {}

  static List<Change> of(BoatModel model) {
    List<Change> changes = new ArrayList<>();
    for (Kit item : model.boat().kit()) {
      if (item.mass() >= HEAVY && canMove(model, item)) {
        spots(model.boat()).forEach(spot -> moved(model, item, spot).ifPresent(changes::add));
      }
    }
    return changes;
  }

  private static boolean canMove(BoatModel model, Kit item) {
    boolean inside = model.form().outside().extent(Vector3.of(1, 0, 0)).contains(item.at().x());
    return inside && !isBoundToItsPlace(model.boat(), item);
  }

  static boolean isBoundToItsPlace(Boat boat, Kit item) {
    return item.isMotor(boat.electrics()) || item.nameContainsAny(STANDS_WHERE_IT_MUST);
  }

  private static List<Spot> spots(Boat boat) {
    return boat.places().stream()
        .flatMap(
            p ->
                Stream.of(
                    new Spot(
                        p.isToOneSide() ? Deed.Near.ABREAST : Deed.Near.UNDER, p.name(), p.x()),
                    new Spot(Deed.Near.FORWARD, p.name(), p.x() + BESIDE),
                    new Spot(Deed.Near.AFT, p.name(), p.x() - BESIDE)))
        .toList();
  }

  private static Optional<Change> moved(BoatModel model, Kit item, Spot spot) {
    return lowest(model, item, spot.x()).map(at -> change(model.boat(), item, spot, at));
  }

  private static Change change(Boat boat, Kit item, Spot spot, Vector3 at) {
    return Change.of(
        "move the " + item.name(),
        new Deed.MoveKit(
            item.name(), spot.near(), spot.place(), spot.x(), item.needsVenting(boat.electrics())),
        item.needsVenting(boat.electrics()) ? Effort.AN_AFTERNOON : Effort.AN_HOUR,
        moved(boat, item, at));
  }

  private static Boat moved(Boat boat, Kit item, Vector3 at) {
    return boat.withKit(boat.kit().stream().map(k -> k == item ? k.movedTo(at) : k).toList());
  }

  /**
   * A thing at the distance along the boat that somebody named, at its height and as far from the
   * middle line as it was. Where the bottom rises it stands higher by as much; empty where it finds
   * no room even so.
   */
  static Optional<Change> along(BoatModel model, Kit item, double x) {
    return standing(model, item, x).map(at -> along(model.boat(), item, at));
  }

  private static Change along(Boat boat, Kit item, Vector3 at) {
    return Change.of(
        "move the " + item.name(),
        new Deed.MoveKitAlong(item.name(), at.x(), at.z(), item.needsVenting(boat.electrics())),
        Effort.AN_HOUR,
        moved(boat, item, at));
  }

  /** A thing that hangs outside or stands above the rail does so elsewhere as well. */
  private static Optional<Vector3> standing(BoatModel model, Kit item, double x) {
    double volume = item.volume().orElse(UNKNOWN_SIZE);
    Vector3 same = Vector3.of(x, item.at().y(), item.at().z());
    if (!inside(model, Box.cube(item.at(), volume))) {
      return Optional.of(same);
    }
    return IntStream.rangeClosed(0, (int) Math.rint(HIGHEST / STEP))
        .mapToObj(up -> same.plus(Vector3.of(0, 0, up * STEP)))
        .filter(at -> inside(model, Box.cube(at, volume)))
        .findFirst();
  }

  /** The lowest position at this spot; empty where something else is. */
  private static Optional<Vector3> lowest(BoatModel model, Kit item, double x) {
    double volume = item.volume().orElse(UNKNOWN_SIZE);
    double side = Math.cbrt(volume);
    double floor = model.boat().hull().floor();
    for (double up = 0; up <= HIGHEST; up += STEP) {
      Vector3 at = Vector3.of(x, 0, floor + up + side / 2);
      Box box = Box.cube(at, volume);
      if (inside(model, box)) {
        boolean there = item.at().minus(at).norm() < BESIDE / 2;
        return there || taken(model, item, box) ? Optional.empty() : Optional.of(at);
      }
    }
    return Optional.empty();
  }

  private static boolean inside(BoatModel model, Box box) {
    return model.form().inside().within(box).volume() > 0.98 * box.volume();
  }

  /** Whether kit, a seat, or a chamber is there, whether it counts or not. */
  private static boolean taken(BoatModel model, Kit item, Box box) {
    return model.spaces().stream().anyMatch(s -> s.box().overlaps(box))
        || model.boat().kit().stream().anyMatch(k -> k != item && meets(k, box))
        || model.boat().places().stream().anyMatch(p -> above(p, box));
  }

  static boolean meets(Kit kit, Box box) {
    return box.contains(kit.at()) || kit.volume().isPresent() && kit.box().overlaps(box);
  }

  /** Whether the seat would come down on it. */
  private static boolean above(Place place, Box box) {
    return box.x().to() >= place.along().from()
        && box.x().from() <= place.along().to()
        && box.z().to() > place.z() - CLEAR;
  }
}
