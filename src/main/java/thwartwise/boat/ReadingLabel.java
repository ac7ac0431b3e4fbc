package thwartwise.boat;

/** Which height of the rail above the water, or which heel, was read, and with what aboard. */
public record ReadingLabel(FloatedState state, ReadingPoint point) {

  /** What was aboard. */
  public enum FloatedState {
    EMPTY,
    SEATED,
    WEIGHT_TO_PORT,
    WEIGHT_TO_STARBOARD
  }

  /** Rails: bow and stern on the port side, the next two amidships. */
  public enum ReadingPoint {
    BOW,
    STERN,
    PORT,
    STARBOARD,
    /** Not a rail but the heel itself, by a plumb line or a level. */
    HEEL
  }
}
