package thwartwise.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.CountedBuoyancy;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Space;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Deed.ProvenChamber;

/**
 * A recorded leak test for chambers that are only claimed to be tight, or whose test is out of
 * date.
 */
final class ChamberTesting {
  private ChamberTesting() {}

  static List<Change> of(BoatModel model, LocalDate today) {
    Boat boat = model.boat();
    List<Space> unproven = model.spaces().stream().filter(s -> couldCount(boat, s)).toList();
    List<Chamber> chambers = unproven.stream().map(Space::chamber).distinct().toList();
    List<Change> changes = new ArrayList<>();
    for (Chamber chamber : chambers) {
      List<Space> of = unproven.stream().filter(s -> s.chamber() == chamber).toList();
      changes.add(change(List.of(named(chamber, of)), boat, of, today));
    }
    if (chambers.size() > 1) {
      List<ProvenChamber> all =
          chambers.stream()
              .map(c -> named(c, unproven.stream().filter(s -> s.chamber() == c).toList()))
              .toList();
      changes.add(change(all, boat, unproven, today));
    }
    return changes;
  }

  private static ProvenChamber named(Chamber chamber, List<Space> unproven) {
    return unproven.size() < chamber.parts().size()
        ? new ProvenChamber(unproven.get(0).name(), false)
        : new ProvenChamber(chamber.name(), chamber.mirrored());
  }

  private static boolean couldCount(Boat boat, Space space) {
    return CountedBuoyancy.ventedFor(space.part(), boat).isEmpty()
        && space.counting().ifProven() > space.counting().share();
  }

  private static Change change(
      List<ProvenChamber> named, Boat boat, List<Space> proven, LocalDate today) {
    List<Chamber> chambers =
        boat.chambers().stream().map(c -> proven(c, parts(c, proven), today)).toList();
    return Change.of(
        "prove " + named,
        new Deed.ProveChambers(named, proven.size() > 1),
        Effort.AN_HOUR,
        boat.withChambers(chambers));
  }

  private static List<ChamberPart> parts(Chamber chamber, List<Space> spaces) {
    return spaces.stream().filter(s -> s.chamber() == chamber).map(Space::part).toList();
  }

  /** The same chamber with a new test of some of its parts that proves them tight. */
  static Chamber proven(Chamber chamber, List<ChamberPart> parts, LocalDate today) {
    SealTest test = new SealTest(today, "leak test", 20, 0, "whoever does it");
    Filling tight = new Filling.Air(Seal.PROVEN, Optional.of(test));
    Chamber proven = chamber;
    for (ChamberPart part : parts) {
      proven = proven.filledWith(part, tight);
    }
    return proven;
  }
}
