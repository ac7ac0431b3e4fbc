/**
 * How many people and how much weight, and in which seats: the search for the greatest crew and
 * load that meet every check that limits the crew, and the seats of named people. SI.
 */
package thwartwise.crew;
