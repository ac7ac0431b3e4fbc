package thwartwise.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;

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
        new ArrayList<>(
            OverdueItem.of(boat, last.map(r -> r.date().toLocalDate()), changed, today));
    if (chainBroken) {
      due.add("its records were changed, added to or lost (\"records check\")");
    }
    return new OfBoat(boat.name(), last, due);
  }
}
