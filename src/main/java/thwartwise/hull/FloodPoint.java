package thwartwise.hull;

import thwartwise.geometry.Vector3;

/** A point where water comes aboard, with the name a person would look for. */
public record FloodPoint(String name, Vector3 at) {}
