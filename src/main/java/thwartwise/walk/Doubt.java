package thwartwise.walk;

import java.util.Optional;

/**
 * What is unlikely about an answer: asked about, since it may be true all the same.
 *
 * @param reason one line
 * @param meant what was probably meant, as it could be typed
 * @param mayBeKept whether it is taken when the person insists
 */
record Doubt(String reason, Optional<String> meant, boolean mayBeKept) {

  /** The same doubt, offering something else. */
  Doubt meaning(Optional<String> other) {
    return new Doubt(reason, other, mayBeKept);
  }
}
