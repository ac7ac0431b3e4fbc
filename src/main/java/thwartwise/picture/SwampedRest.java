package thwartwise.picture;

/** How a boat full of water comes to lie, as far as it can be drawn. */
public enum SwampedRest {
  NOT_ASSESSED,
  SINKS,
  NOT_UPRIGHT,
  UPRIGHT
}
