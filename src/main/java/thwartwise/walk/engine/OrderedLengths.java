package thwartwise.walk.engine;

import java.util.Optional;

/** Mistakes with two distances that more than one question can have. */
public final class OrderedLengths {

  private OrderedLengths() {}

  /** Refuses a stretch that does not end farther than it begins. */
  public static Optional<String> backward(
      String what, double from, double to, QuantityQuestions quantities) {
    return to > from
        ? Optional.empty()
        : Optional.of(
            "%s: it would run from %s to %s. The second must be the greater: type it again, or back."
                .formatted(what, quantities.show(from), quantities.show(to)));
  }
}
