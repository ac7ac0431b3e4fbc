package thwartwise.remedy;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.CountedBuoyancy;

/** Every change worth trying on a boat, always in the same order. */
public final class Changes {
  private Changes() {}

  /** Changes to the boat and its kit; a leak test counts as made today. */
  public static List<Change> toTheBoat(BoatModel model, LocalDate today) {
    return Stream.of(
            ChamberTesting.of(model, today),
            ChamberSealing.of(model, today),
            KitMoving.of(model),
            EdgeRaising.of(model),
            FoamFitting.of(model),
            SeatLowering.of(model, today),
            KitUnloading.of(model.boat()))
        .flatMap(List::stream)
        .toList();
  }

  /** Changes to who is aboard today and where they sit. */
  public static List<Change> toToday(Boat boat) {
    return CrewShifting.of(boat);
  }

  /**
   * Further changes to the boat after a change, about one more topic, as they fit the changed boat.
   */
  public static List<Change> then(Change done, BoatModel changed, Change other, LocalDate today) {
    List<Change> all = other.onlyToday() ? toToday(changed.boat()) : toTheBoat(changed, today);
    return all.stream()
        .filter(c -> c.topic().equals(other.topic()))
        .filter(c -> !c.onlyToday() || c.deed().equals(other.deed()))
        .map(done::and)
        .toList();
  }

  /** What must never be done to this boat. */
  public static List<Prohibition> prohibitions(Boat boat) {
    return boat.chambers().stream()
        .flatMap(chamber -> chamber.parts().stream())
        .flatMap(
            chamber ->
                CountedBuoyancy.ventedFor(chamber, boat).stream()
                    .limit(1)
                    .<Prohibition>map(
                        kit -> new Prohibition.SealVented(chamber.name(), kit.name())))
        .toList();
  }

  /** What must never be done to a boat. */
  public sealed interface Prohibition {

    /** Never seal a space that is vented for what it holds. */
    record SealVented(String chamber, String kit) implements Prohibition {}

    /** The words of an old record. */
    record AsRecorded(String words) implements Prohibition {}
  }
}
