package thwartwise.walk.engine;

/**
 * A part of a walk, as a person sees it.
 *
 * @param name of what is asked there, in a word or two
 * @param questions how many there are in most boats
 */
public record WalkSection(String name, int questions) {}
