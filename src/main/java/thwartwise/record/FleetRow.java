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

/** One row of the table of a group's boats. */
public sealed interface FleetRow {

  /** The name in the table: that of the boat, or of an unusable file. */
  String name();

  /** Whether somebody has to act on it. */
  boolean needsSeeingTo();

  /**
   * A boat.
   *
   * @param last its newest record; empty when it was never inspected
   * @param overdue what is due
   */
  record OfBoat(String name, Optional<InspectionRecord> last, List<OverdueItem> overdue)
      implements FleetRow {
    public OfBoat {
      overdue = List.copyOf(overdue);
    }

    @Override
    public boolean needsSeeingTo() {
      return !overdue.isEmpty();
    }
  }

  /** An unusable file, and why. */
  record OfFile(String name, String message) implements FleetRow {
    @Override
    public boolean needsSeeingTo() {
      return true;
    }
  }

  /**
   * The row of a boat with a file, a record, or both.
   *
   * @param changed whether the file differs from the one inspected last
   * @param chainBroken whether its records no longer fit together
   */
  static FleetRow of(
      Boat boat,
      Optional<InspectionRecord> last,
      boolean changed,
      boolean chainBroken,
      LocalDate today) {
    List<OverdueItem> due =
        new ArrayList<>(overdueItems(boat, last.map(r -> r.date().toLocalDate()), changed, today));
    if (chainBroken) {
      due.add(new OverdueItem.BrokenChain());
    }
    return new OfBoat(boat.name(), last, due);
  }

  /**
   * Everything that is due on a day. An inspection is valid no longer than a leak test (judgement).
   *
   * @param boat as in its file, or as inspected last where there is no file
   * @param last the day of its last inspection; empty if there was none
   * @param changed whether the file differs from the one inspected last
   */
  static List<OverdueItem> overdueItems(
      Boat boat, Optional<LocalDate> last, boolean changed, LocalDate today) {
    List<OverdueItem> due = new ArrayList<>();
    if (last.isEmpty()) {
      due.add(new OverdueItem.FirstInspection());
    }
    last.filter(day -> SealTest.isStale(day, today))
        .ifPresent(day -> due.add(new OverdueItem.Inspection(day)));
    if (changed) {
      due.add(new OverdueItem.ChangedFile());
    }
    boat.observedTrial()
        .filter(seen -> !seen.failed() && seen.date().isBefore(today))
        .ifPresent(seen -> due.add(new OverdueItem.Trial(seen.date())));
    boat.chambers().stream()
        .flatMap(chamber -> chamber.parts().stream())
        .forEach(part -> stale(part, today).ifPresent(due::add));
    return due;
  }

  private static Optional<OverdueItem> stale(ChamberPart chamber, LocalDate today) {
    return chamber.filling() instanceof Filling.Air air
            && air.seal() == Seal.PROVEN
            && air.isTestOutdated(today)
        ? air.test().map(test -> new OverdueItem.LeakTest(chamber.name(), test.date()))
        : Optional.empty();
  }
}
