package thwartwise.spread;

/**
 * A number of people, and the probability that the boat carries them.
 *
 * @param share of boats measured like this in which that many people, and any fewer, meet every
 *     limit
 */
public record CrewChance(int people, double share) {}
