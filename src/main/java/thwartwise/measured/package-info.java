/**
 * The one table of all single values of a boat: key, range, how to measure it, why it matters, its
 * default, and how it is shown. The boat file, the walk, the comparison of records and the page all
 * read it.
 */
package thwartwise.measured;
