package thwartwise.boat;

import thwartwise.geometry.Vector3;

/** Where a line is made fast: a cleat, a ring, a bollard, or the thwart round which it is tied. */
public record Cleat(String name, Vector3 at) {}
