package thwartwise.walk.engine;

import thwartwise.boat.Boat;
import thwartwise.measure.UnitSystem;

/**
 * What the answers given so far make of the boat, once its hull is known. What was not asked for
 * yet is not there.
 *
 * @param units those of the walk
 */
public record PartialBoat(Boat boat, UnitSystem units) {}
