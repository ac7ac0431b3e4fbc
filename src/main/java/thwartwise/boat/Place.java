package thwartwise.boat;

/**
 * Where people sit.
 *
 * @param x along the boat, m
 * @param z height of the seat, m
 * @param halfWidth how far out from the middle of the boat the middle of a person can get, m
 * @param people how many it takes
 */
public record Place(String name, double x, double z, double halfWidth, int people) {}
