package thwartwise.picture;

/**
 * A picture and its facts.
 *
 * @param svg one {@code svg} element, well formed
 */
public record Picture(PictureFacts facts, String svg) {}
