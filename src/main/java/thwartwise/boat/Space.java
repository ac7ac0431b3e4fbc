package thwartwise.boat;

import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;

/**
 * A chamber as it stands in the boat; a mirrored one makes two.
 *
 * @param box its limits
 * @param solid the part of the hull's inside within them
 */
public record Space(String name, Box box, Solid solid, Counting counting) {}
