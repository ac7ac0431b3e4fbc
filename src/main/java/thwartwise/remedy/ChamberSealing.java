package thwartwise.remedy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.CountedBuoyancy;
import thwartwise.boat.Filling;
import thwartwise.boat.Opening;
import thwartwise.boat.Space;
import thwartwise.remedy.Change.Effort;

/**
 * Closing for good the spaces that fill today, with a leak test. A space with a battery or a
 * charger is never among them, because it is vented.
 */
final class ChamberSealing {
  private ChamberSealing() {}

  static List<Change> of(BoatModel model, LocalDate today) {
    Boat boat = model.boat();
    return boat.chambers().stream()
        .flatMap(chamber -> sealed(model, chamber, today).stream())
        .toList();
  }

  private static Optional<Change> sealed(BoatModel model, Chamber chamber, LocalDate today) {
    List<ChamberPart> filling =
        model.spaces().stream()
            .filter(space -> space.chamber() == chamber && fills(model.boat(), space))
            .map(Space::part)
            .toList();
    return filling.isEmpty()
        ? Optional.empty()
        : Optional.of(sealed(model.boat(), chamber, filling, today));
  }

  private static boolean fills(Boat boat, Space space) {
    return space.part().filling() instanceof Filling.Air
        && !(space.counting().share() > 0)
        && !(space.counting().ifProven() > 0)
        && CountedBuoyancy.ventedFor(space.part(), boat).isEmpty();
  }

  private static Change sealed(
      Boat boat, Chamber chamber, List<ChamberPart> parts, LocalDate today) {
    String name = parts.size() < chamber.parts().size() ? parts.get(0).name() : chamber.name();
    List<Chamber> chambers =
        boat.chambers().stream()
            .map(c -> c == chamber ? ChamberTesting.proven(c, parts, today) : c)
            .toList();
    List<Opening> openings =
        boat.openings().stream().map(o -> leadsInto(o, parts) ? shut(o) : o).toList();
    return Change.of(
        "seal the " + name,
        new Deed.SealChamber(name),
        Effort.AN_AFTERNOON,
        boat.withChambers(chambers).withOpenings(openings));
  }

  private static boolean leadsInto(Opening opening, List<ChamberPart> parts) {
    return opening.closedBy().isEmpty()
        && opening.into().filter(in -> parts.stream().anyMatch(p -> p.isNamedBy(in))).isPresent();
  }

  private static Opening shut(Opening o) {
    return new Opening(
        o.name(), o.middle(), o.width(), o.athwart(), Optional.of("lid"), o.into(), o.diameter());
  }
}
