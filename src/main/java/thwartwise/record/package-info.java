/** Dated inspections, kept for good. */
package thwartwise.record;
