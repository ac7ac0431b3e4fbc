package thwartwise.page;

/**
 * A picture for the forms of the page that can show one.
 *
 * @param title what it shows, in a few words
 * @param alternative the same for somebody who cannot see it
 * @param caption what to make of it, below it
 * @param svg one {@code svg} element, well formed, that asks for nothing outside itself; lettering
 *     has its size, weight and anchor as attributes, not from a style sheet
 */
public record Illustration(String title, String alternative, String caption, String svg) {}
