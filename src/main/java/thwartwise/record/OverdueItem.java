package thwartwise.record;

import java.time.LocalDate;

/** What is due again for a boat, with the day of the last time. */
public sealed interface OverdueItem {

  /** The boat was never inspected. */
  record FirstInspection() implements OverdueItem {}

  record Inspection(LocalDate last) implements OverdueItem {}

  /** The boat file differs from the one inspected last. */
  record ChangedFile() implements OverdueItem {}

  /** The trial in knee-deep water. */
  record Trial(LocalDate last) implements OverdueItem {}

  record LeakTest(String chamber, LocalDate last) implements OverdueItem {}

  /** Its records no longer fit together. */
  record BrokenChain() implements OverdueItem {}
}
