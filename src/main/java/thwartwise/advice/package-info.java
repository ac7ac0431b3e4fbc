/** Possible changes to a boat: real changes, tried on it and ranked by their gain. */
package thwartwise.advice;
