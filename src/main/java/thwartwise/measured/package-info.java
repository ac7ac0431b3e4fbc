/**
 * The one table of what can be known of a boat: every single value with its key, its range, how to
 * measure it, why it matters, what is taken when it is left out, and how it is shown. The boat
 * file, the walk, the comparison of records and the page all read it.
 */
package thwartwise.measured;
