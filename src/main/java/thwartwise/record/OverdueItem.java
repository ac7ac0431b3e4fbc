package thwartwise.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Seal;
import thwartwise.boat.SealTest;

/**
 * What of a boat is due again on a day, in words. An inspection holds no longer than a leak test
 * (judgement).
 */
final class OverdueItem {
  private OverdueItem() {}

  /**
   * Everything that is due.
   *
   * @param boat as its file has it now, or as it was inspected last where there is no file
   * @param last when it was inspected; empty when it never was
   * @param changed whether the file is another one than was inspected
   */
  static List<String> of(Boat boat, Optional<LocalDate> last, boolean changed, LocalDate today) {
    List<String> due = new ArrayList<>();
    if (last.isEmpty()) {
      due.add("never inspected");
    }
    last.filter(day -> SealTest.isStale(day, today))
        .ifPresent(day -> due.add("last inspection over twelve months ago"));
    if (changed) {
      due.add("boat file changed since the last record");
    }
    boat.trialSeen()
        .filter(seen -> !seen.wentBadly() && seen.date().isBefore(today))
        .ifPresent(seen -> due.add("trial in knee-deep water of " + seen.date()));
    boat.chambers().stream()
        .flatMap(chamber -> chamber.parts().stream())
        .forEach(part -> stale(part, today).ifPresent(due::add));
    return due;
  }

  private static Optional<String> stale(ChamberPart chamber, LocalDate today) {
    return chamber.filling() instanceof Filling.Air air && air.seal() == Seal.PROVEN
        ? air.test()
            .map(SealTest::date)
            .filter(date -> SealTest.isStale(date, today))
            .map(date -> "leak test of " + chamber.name() + " of " + date)
        : Optional.empty();
  }
}
