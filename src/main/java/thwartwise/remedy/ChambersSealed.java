package thwartwise.remedy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Counting;
import thwartwise.boat.Craft;
import thwartwise.boat.Filling;
import thwartwise.boat.Opening;

/**
 * Spaces that fill today, shut for good and proven. One with a battery or a charger in it is never
 * among them: it is vented.
 */
final class ChambersSealed {
  private ChambersSealed() {}

  static List<Change> of(Craft craft, LocalDate today) {
    Boat boat = craft.boat();
    return boat.chambers().stream()
        .filter(chamber -> fills(craft, chamber))
        .filter(chamber -> Counting.ventedFor(chamber, boat.kit()).isEmpty())
        .map(chamber -> sealed(boat, chamber, today))
        .toList();
  }

  private static boolean fills(Craft craft, Chamber chamber) {
    return chamber.filling() instanceof Filling.Air
        && craft.spaces().stream()
            .filter(space -> space.chamber() == chamber)
            .allMatch(s -> !(s.counting().share() > 0) && !(s.counting().ifProven() > 0));
  }

  private static Change sealed(Boat boat, Chamber chamber, LocalDate today) {
    List<Chamber> chambers =
        boat.chambers().stream()
            .map(c -> c == chamber ? ChambersProven.proven(c, today) : c)
            .toList();
    List<Opening> openings =
        boat.openings().stream().map(o -> leadsInto(o, chamber) ? shut(o) : o).toList();
    return Change.of(
        "seal the " + chamber.name(),
        "Seal the " + chamber.name() + " and prove it with a leak test",
        "Close every hole, seam and lid of it with a gasket or sealant; then test it: "
            + Counting.wanted(),
        Effort.AN_AFTERNOON,
        List.of(
            "It buys this only if it proves tight",
            "No battery and no charger ever goes into a sealed space"),
        boat.withChambers(chambers).withOpenings(openings));
  }

  private static boolean leadsInto(Opening opening, Chamber chamber) {
    return opening.closedBy().isEmpty() && opening.into().map(chamber.name()::equals).orElse(false);
  }

  private static Opening shut(Opening o) {
    return new Opening(
        o.name(), o.middle(), o.width(), o.athwart(), Optional.of("lid"), o.into(), o.diameter());
  }
}
