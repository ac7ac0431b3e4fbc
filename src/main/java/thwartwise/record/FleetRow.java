package thwartwise.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;

/** One line of the table of a group's boats. */
public sealed interface FleetRow {

  /** What it is called there: a boat by its name, a file that cannot be used by its own. */
  String name();

  /** Whether somebody has to see to it. */
  boolean needsSeeingTo();

  /**
   * A boat.
   *
   * @param last its newest record; empty when it was never inspected
   * @param overdue what is due, in words
   */
  record OfBoat(String name, Optional<InspectionRecord> last, List<String> overdue)
      implements FleetRow {
    public OfBoat {
      overdue = List.copyOf(overdue);
    }

    @Override
    public boolean needsSeeingTo() {
      return !overdue.isEmpty();
    }
  }

  /** A file that cannot be used, and why. */
  record OfFile(String name, String message) implements FleetRow {
    @Override
    public boolean needsSeeingTo() {
      return true;
    }
  }

  /**
   * The row of a boat of which there is a file, a record, or both.
   *
   * @param changed whether the file is another one than was inspected last
   * @param chainBroken whether its records no longer fit together
   */
  static FleetRow of(
      Boat boat,
      Optional<InspectionRecord> last,
      boolean changed,
      boolean chainBroken,
      LocalDate today) {
    List<String> due =
        new ArrayList<>(overdueItems(boat, last.map(r -> r.date().toLocalDate()), changed, today));
    if (chainBroken) {
      due.add("its records were changed, added to or lost (\"records check\")");
    }
    return new OfBoat(boat.name(), last, due);
  }

  // What of a boat is due again on a day, in words. An inspection holds no longer than a leak
  // test (judgement).

  /**
   * Everything that is due.
   *
   * @param boat as its file has it now, or as it was inspected last where there is no file
   * @param last when it was inspected; empty when it never was
   * @param changed whether the file is another one than was inspected
   */
  static List<String> overdueItems(
      Boat boat, Optional<LocalDate> last, boolean changed, LocalDate today) {
    List<String> due = new ArrayList<>();
    if (last.isEmpty()) {
      due.add("never inspected");
    }
    last.filter(day -> SealTest.isStale(day, today))
        .ifPresent(day -> due.add("last inspection over twelve months ago"));
    if (changed) {
      due.add("boat file changed since the last record");
    }
    boat.observedTrial()
        .filter(seen -> !seen.failed() && seen.date().isBefore(today))
        .ifPresent(seen -> due.add("trial in knee-deep water of " + seen.date()));
    boat.chambers().stream()
        .flatMap(chamber -> chamber.parts().stream())
        .forEach(part -> stale(part, today).ifPresent(due::add));
    return due;
  }

  private static Optional<String> stale(ChamberPart chamber, LocalDate today) {
    return chamber.filling() instanceof Filling.Air air
            && air.seal() == Seal.PROVEN
            && air.isTestOutdated(today)
        ? air.test().map(test -> "leak test of " + chamber.name() + " of " + test.date())
        : Optional.empty();
  }
}
