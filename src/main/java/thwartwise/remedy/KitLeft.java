package thwartwise.remedy;

import java.util.List;
import java.util.Locale;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;

/** Heavy things left ashore, but never what brings people home or keeps them off the weir. */
final class KitLeft {
  private static final List<String> STAYS =
      List.of("oar", "paddle", "anchor", "bailer", "bucket", "jacket", "aid", "rope", "foam");

  private KitLeft() {}

  static List<Change> of(Boat boat) {
    return boat.kit().stream()
        .filter(item -> item.mass() >= KitMoved.HEAVY && !stays(item))
        .map(item -> left(boat, item))
        .toList();
  }

  private static boolean stays(Kit item) {
    String name = item.name().toLowerCase(Locale.ROOT);
    return STAYS.stream().anyMatch(name::contains);
  }

  static Change left(Boat boat, Kit item) {
    boolean drives = KitMoved.isBoundToItsPlace(item) || item.needsVenting();
    return Change.of(
        "leave the " + item.name(),
        new Deed.LeaveKit(item.name(), drives),
        Effort.NONE,
        boat.withKit(boat.kit().stream().filter(k -> k != item).toList()));
  }
}
