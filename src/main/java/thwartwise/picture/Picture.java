package thwartwise.picture;

/**
 * A picture with its words.
 *
 * @param title what it shows, in a few words
 * @param alternative the same for somebody who cannot see it
 * @param caption what to make of it
 * @param svg one {@code svg} element, well formed
 */
public record Picture(String title, String alternative, String caption, String svg) {}
