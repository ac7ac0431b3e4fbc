package thwartwise.walk.engine;

import java.util.Optional;

/**
 * Ends a replay at the first question without a fitting answer. A signal, not a fault: it carries
 * no stack trace.
 */
public final class UnansweredQuestion extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Entry<?> entry;
  private final transient Optional<String> misfit;

  UnansweredQuestion(Entry<?> entry, Optional<String> misfit) {
    super(entry.key(), null, false, false);
    this.entry = entry;
    this.misfit = misfit;
  }

  public Entry<?> entry() {
    return entry;
  }

  /** Why the answer that was kept does not fit. */
  public Optional<String> misfit() {
    return misfit;
  }
}
