/**
 * The load case: who and what is aboard, what is done to it, and under which allowance, as data for
 * records and pages; and the boat so loaded, which the checks ask.
 */
package thwartwise.loadcase;
