package thwartwise.afloat;

import java.util.List;

/**
 * A key of all that lifts a boat apart from its people.
 *
 * @param solids equal only where that is the same
 * @param kind equal for the same question to a boat as measured and with a measurement moved
 */
public record LiftKey(Object solids, Object kind) {
  private static final Object DRY = List.of("dry");

  /** The key of a boat dry inside. */
  static LiftKey dry(Object solids) {
    return new LiftKey(solids, DRY);
  }

  LiftKey with(List<?> more) {
    return new LiftKey(List.of(solids, more), kind);
  }
}
