package thwartwise.record;

import java.time.LocalDate;

/** What is due again of a boat, with the day on which it was done last. */
public sealed interface OverdueItem {

  /** It was never inspected. */
  record FirstInspection() implements OverdueItem {}

  record Inspection(LocalDate last) implements OverdueItem {}

  /** The boat file is another one than was inspected last. */
  record ChangedFile() implements OverdueItem {}

  /** The trial in knee-deep water. */
  record Trial(LocalDate last) implements OverdueItem {}

  record LeakTest(String chamber, LocalDate last) implements OverdueItem {}

  /** Its records no longer fit together. */
  record BrokenChain() implements OverdueItem {}
}
