package thwartwise.proof;

/** Which height of the rail above the water was read, and with what aboard. */
public record ReadingLabel(FloatedState state, RailPoint point) {

  /** What was aboard. */
  public enum FloatedState {
    EMPTY,
    SEATED,
    WEIGHT_TO_PORT,
    WEIGHT_TO_STARBOARD
  }

  /** Bow and stern on the port side, the other two amidships. */
  public enum RailPoint {
    BOW,
    STERN,
    PORT,
    STARBOARD
  }
}
