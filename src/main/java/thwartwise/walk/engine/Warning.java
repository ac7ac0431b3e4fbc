package thwartwise.walk.engine;

import java.util.Optional;

/**
 * An unlikely answer, which needs confirmation because it may be true.
 *
 * @param reason one line
 * @param meant what was probably meant, as it could be typed
 * @param isConfirmable whether the answer is accepted when the person insists
 */
public record Warning(String reason, Optional<String> meant, boolean isConfirmable) {

  /** The same warning with another suggestion. */
  Warning meaning(Optional<String> other) {
    return new Warning(reason, other, isConfirmable);
  }
}
