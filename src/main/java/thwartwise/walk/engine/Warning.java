package thwartwise.walk.engine;

import java.util.Optional;

/**
 * What is unlikely about an answer: asked about, since it may be true all the same.
 *
 * @param reason one line
 * @param meant what was probably meant, as it could be typed
 * @param isConfirmable whether it is taken when the person insists
 */
public record Warning(String reason, Optional<String> meant, boolean isConfirmable) {

  /** The same doubt, offering something else. */
  Warning meaning(Optional<String> other) {
    return new Warning(reason, other, isConfirmable);
  }
}
