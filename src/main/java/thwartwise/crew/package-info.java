/**
 * How many people and how much weight, sitting where: the search for the greatest crew and load
 * that meet every check that limits a crew, and who of named people sits where. SI.
 */
package thwartwise.crew;
