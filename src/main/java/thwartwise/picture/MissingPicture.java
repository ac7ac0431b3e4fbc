package thwartwise.picture;

/** A picture that could not be drawn, and why. */
public sealed interface MissingPicture {

  /**
   * None of them, since the boat cannot be built.
   *
   * @param message that names the measurements at fault
   */
  record Unusable(String message) implements MissingPicture {}

  /** The one of the boat full of water. */
  record OfSwamped(SwampedRest rest) implements MissingPicture {}

  /** Those of the boat heeled: it does not float upright. */
  record OfHeeled() implements MissingPicture {}
}
