/**
 * Pages made from a record, in the order in which a reader asks. Pure functions: no files, no
 * clock.
 */
package thwartwise.report;
