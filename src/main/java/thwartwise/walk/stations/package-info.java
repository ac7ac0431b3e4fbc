/**
 * Reading a whole table of stations, as people type them and as plans print them: from text to
 * stations, and from stations to answers of the walk. It knows no terminal and no boat.
 */
package thwartwise.walk.stations;
