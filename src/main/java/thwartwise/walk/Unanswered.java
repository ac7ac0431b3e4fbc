package thwartwise.walk;

import java.util.Optional;

/**
 * Ends a replay at the first question without a fitting answer. A signal, not a fault: it carries
 * no stack trace.
 */
final class Unanswered extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Entry<?> entry;
  private final transient Optional<String> misfit;

  Unanswered(Entry<?> entry, Optional<String> misfit) {
    super(entry.key(), null, false, false);
    this.entry = entry;
    this.misfit = misfit;
  }

  Entry<?> entry() {
    return entry;
  }

  /** Why the answer that was kept does not fit. */
  Optional<String> misfit() {
    return misfit;
  }
}
