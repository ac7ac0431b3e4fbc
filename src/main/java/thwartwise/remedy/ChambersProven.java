package thwartwise.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.CountedBuoyancy;
import thwartwise.boat.Craft;
import thwartwise.boat.Filling;
import thwartwise.boat.Seal;
import thwartwise.boat.SealTest;
import thwartwise.boat.Space;

/** A recorded leak test for chambers that are only claimed to be tight, or whose test is stale. */
final class ChambersProven {
  private static final String HOW =
      "Shut it as it is under way and fill it with water from a hose, or push it under: ";
  private static final String RECORD =
      ". Write down the date, how, the minutes, the litres and who did it";
  private static final String TIGHT =
      "It buys this only if the chamber proves tight; if it leaks, find the leak first";

  private ChambersProven() {}

  static List<Change> of(Craft craft, LocalDate today) {
    Boat boat = craft.boat();
    List<Space> unproven = craft.spaces().stream().filter(s -> couldCount(boat, s)).toList();
    List<Chamber> chambers = unproven.stream().map(Space::chamber).distinct().toList();
    List<Change> changes = new ArrayList<>();
    for (Chamber chamber : chambers) {
      List<Space> of = unproven.stream().filter(s -> s.chamber() == chamber).toList();
      changes.add(change("Prove the " + name(chamber, of), boat, of, today));
    }
    if (chambers.size() > 1) {
      String names =
          chambers.stream()
              .map(c -> name(c, unproven.stream().filter(s -> s.chamber() == c).toList()))
              .collect(Collectors.joining(" and "));
      changes.add(change("Prove all of these: " + names, boat, unproven, today));
    }
    return changes;
  }

  private static String name(Chamber chamber, List<Space> unproven) {
    if (unproven.size() < chamber.parts().size()) {
      return unproven.get(0).name();
    }
    return chamber.name() + (chamber.mirrored() ? " on both sides" : "");
  }

  private static boolean couldCount(Boat boat, Space space) {
    return CountedBuoyancy.ventedFor(space.part(), boat.kit()).isEmpty()
        && space.counting().ifProven() > space.counting().share();
  }

  private static Change change(String deed, Boat boat, List<Space> proven, LocalDate today) {
    List<Chamber> chambers =
        boat.chambers().stream().map(c -> proven(c, parts(c, proven), today)).toList();
    return Change.of(
        deed,
        deed + " with a leak test" + (proven.size() > 1 ? " each" : ""),
        HOW + CountedBuoyancy.wanted() + RECORD,
        Effort.AN_HOUR,
        List.of(TIGHT),
        boat.withChambers(chambers));
  }

  private static List<ChamberPart> parts(Chamber chamber, List<Space> spaces) {
    return spaces.stream().filter(s -> s.chamber() == chamber).map(Space::part).toList();
  }

  /** The same chamber with a fresh test for some of its parts that shows them tight. */
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
