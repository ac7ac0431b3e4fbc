package thwartwise.walk;

import java.util.Optional;

/** Slips of the tape that more than one question can have. */
final class Slips {

  private Slips() {}

  /** A stretch that ends where it begins or before. */
  static Optional<String> backward(String what, double from, double to, Tape tape) {
    return to > from
        ? Optional.empty()
        : Optional.of(
            "%s: it would run from %s to %s. The second must be the greater: type it again, or back."
                .formatted(what, tape.show(from), tape.show(to)));
  }
}
