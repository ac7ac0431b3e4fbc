/**
 * One whole run: checks, findings, limits, recommendation. Plain Java, no files, no console, no
 * clock.
 */
package thwartwise.inspection;
