package thwartwise.boat;

import java.util.Optional;
import thwartwise.geometry.Box;

/**
 * An enclosed space or foam block that may hold the swamped boat up: the part of the hull's inside
 * within a box.
 *
 * @param measuredVolume litres poured in, in m³, of one of the two when mirrored
 * @param mirrored whether it has a twin on the other side
 */
public record Chamber(
    String name, Box box, Filling filling, Optional<Double> measuredVolume, boolean mirrored) {}
