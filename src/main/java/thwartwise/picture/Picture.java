package thwartwise.picture;

/**
 * A picture and what it shows.
 *
 * @param svg one {@code svg} element, well formed
 */
public record Picture(PictureFacts facts, String svg) {}
