/** Pages made from a record, in the order a reader asks. Pure functions: no files, no clock. */
package thwartwise.report;
