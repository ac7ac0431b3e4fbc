package thwartwise.boat;

/**
 * A measurement that looks wrong and was kept all the same.
 *
 * @param about identity of the doubt, as {@code thwartwise.plausibility.DoubtId} writes it
 * @param reason why it is right, in the words of whoever kept it
 */
public record Kept(String about, String reason) {}
