/**
 * How far the answer may be off because the measurements are: the inputs of a boat with their
 * spreads, what each contributes to the margins of a crew, and in how many of a hundred boats
 * measured like this a crew meets every limit.
 *
 * <p>A spread is one standard deviation. It comes from how a thing was measured, where somebody
 * said so ({@link thwartwise.boat.MeasuringMethod}); where nobody did, from the allowance of the
 * rule set ({@link thwartwise.loadcase.Allowance}). The margins are those as measured, before any
 * allowance. What few stations leave out of the shape is in these allowances.
 */
package thwartwise.spread;
