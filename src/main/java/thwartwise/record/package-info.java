/** Dated inspections, which are kept for good. */
package thwartwise.record;
