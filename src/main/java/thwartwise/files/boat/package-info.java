/**
 * The boat file, {@code thwartwise/boat/1}: one class for each kind of thing in it, which reads and
 * writes that thing.
 */
package thwartwise.files.boat;
