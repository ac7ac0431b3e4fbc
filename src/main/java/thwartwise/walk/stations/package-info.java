/**
 * A whole table of stations read at once, as people write them and as plans print them: text to
 * stations, and stations to the answers of the walk. Knows no terminal and no boat.
 */
package thwartwise.walk.stations;
