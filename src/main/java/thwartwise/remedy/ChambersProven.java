package thwartwise.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Counting;
import thwartwise.boat.Craft;
import thwartwise.boat.Filling;
import thwartwise.boat.Seal;
import thwartwise.boat.SealTest;

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
    List<Chamber> unproven =
        boat.chambers().stream().filter(chamber -> couldCount(craft, chamber)).toList();
    List<Change> changes = new ArrayList<>();
    unproven.forEach(
        chamber ->
            changes.add(change("Prove the " + chamber.name(), boat, List.of(chamber), today)));
    if (unproven.size() > 1) {
      String names = String.join(" and ", unproven.stream().map(Chamber::name).toList());
      changes.add(change("Prove all of these: " + names, boat, unproven, today));
    }
    return changes;
  }

  private static boolean couldCount(Craft craft, Chamber chamber) {
    return Counting.ventedFor(chamber, craft.boat().kit()).isEmpty()
        && craft.spaces().stream()
            .filter(space -> space.chamber() == chamber)
            .anyMatch(space -> space.counting().ifProven() > space.counting().share());
  }

  private static Change change(String deed, Boat boat, List<Chamber> proven, LocalDate today) {
    List<Chamber> chambers =
        boat.chambers().stream().map(c -> proven.contains(c) ? proven(c, today) : c).toList();
    return Change.of(
        deed,
        deed + " with a leak test",
        HOW + Counting.wanted() + RECORD,
        Effort.AN_HOUR,
        List.of(TIGHT),
        boat.withChambers(chambers));
  }

  /** The same chamber with a fresh test that shows it tight. */
  static Chamber proven(Chamber chamber, LocalDate today) {
    SealTest test = new SealTest(today, "leak test", 20, 0, "whoever does it");
    return chamber.filledWith(new Filling.Air(Seal.PROVEN, Optional.of(test)));
  }
}
