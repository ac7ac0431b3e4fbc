package thwartwise.remedy;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Deed.Drive;

/**
 * Leaving heavy things ashore, but never what brings people home or keeps them off the weir. What
 * drives the boat is left only where there is other drive.
 */
final class KitUnloading {
  private static final List<String> STAYS =
      List.of("oar", "paddle", "anchor", "bailer", "bucket", "jacket", "aid", "rope", "foam");

  private static final List<String> BY_HAND = List.of("oar", "paddle", "scull");

  private static final List<String> CHARGER = List.of("charger");

  private KitUnloading() {}

  static List<Change> of(Boat boat) {
    return boat.kit().stream()
        .filter(item -> item.mass() >= KitMoving.HEAVY && !item.nameContainsAny(STAYS))
        .filter(item -> !leavesItStill(boat, item))
        .map(item -> left(boat, item))
        .toList();
  }

  /** Whether the boat can still get home: without it and without oars or paddles nobody does. */
  private static boolean leavesItStill(Boat boat, Kit item) {
    return drive(boat, item).stops()
        && boat.kit().stream().noneMatch(k -> k.nameContainsAny(BY_HAND));
  }

  static Change left(Boat boat, Kit item) {
    return Change.of(
        "leave the " + item.name(),
        new Deed.LeaveKit(item.name(), drive(boat, item), driven(boat, item)),
        Effort.NONE,
        boat.withKit(boat.kit().stream().filter(k -> k != item).toList()));
  }

  /** The loss of drive; a battery is considered together with what it can drive. */
  private static Drive drive(Boat boat, Kit item) {
    if (KitMoving.isBoundToItsPlace(boat, item)) {
      return Drive.ITSELF;
    }
    if (!item.needsVenting(boat.electrics()) || item.nameContainsAny(CHARGER)) {
      return Drive.NONE;
    }
    if (motor(boat).isEmpty()) {
      return Drive.FEEDS;
    }
    return other(boat, item).isPresent() ? Drive.SHORTER : Drive.STOPS;
  }

  private static String driven(Boat boat, Kit item) {
    return item.needsVenting(boat.electrics()) ? motor(boat).map(Kit::name).orElse("") : "";
  }

  /** A motor that a battery drives or starts. */
  private static Optional<Kit> motor(Boat boat) {
    return boat.kit().stream()
        .filter(k -> k.isMotor(boat.electrics()) && !k.needsVenting(boat.electrics()))
        .findFirst();
  }

  private static Optional<Kit> other(Boat boat, Kit item) {
    return boat.kit().stream()
        .filter(
            k ->
                k != item
                    && k.needsVenting(boat.electrics())
                    && !k.isMotor(boat.electrics())
                    && !k.nameContainsAny(CHARGER))
        .findFirst();
  }
}
